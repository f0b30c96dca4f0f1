import { gravity } from './gravity.ts';

/**
 * Friction of a laminar flat plate of one chord, one side: 1.328/√Re. H. Blasius, Zeitschrift für Mathematik und Physik 56
 * (1908) 1. Holds up to a Reynolds number of some 500,000 in calm flow.
 */
export function laminarPlateDrag(reynoldsNumber: number): number {
  return 1.328 / Math.sqrt(reynoldsNumber);
}

/** Everything the drag of a gliding model is worked out of. All of it in SI and positive; drag may be 0. */
export interface Glider {
  /** kg. */
  readonly mass: number;
  /** m², of the wing, to which all coefficients refer. */
  readonly wingArea: number;
  /** Mean aerodynamic chord, m. */
  readonly chord: number;
  readonly aspectRatio: number;
  /** kg/m³. */
  readonly density: number;
  /** Dynamic, Pa·s. */
  readonly viscosity: number;
  /** Profile drag as a multiple of that of a laminar flat plate wetted on both sides. */
  readonly plateFactor: number;
  /** Drag coefficient that does not change with speed: fuselage, tail, propellers. */
  readonly fixedDrag: number;
  readonly spanEfficiency: number;
  /** The largest lift coefficient that can be flown; Infinity where nothing limits it. */
  readonly usableLift: number;
}

/** Still air, straight, at one lift coefficient. */
export interface SteadyGlide {
  /** Coefficients on the wing's area. */
  readonly lift: number;
  readonly drag: number;
  /** m/s. */
  readonly speed: number;
  readonly sink: number;
}

/**
 * The glide at one lift coefficient C_L: V = √(2mg/(ρ·S·C_L)), its own Reynolds number ρ·V·c/μ, C_D = k·2·1.328/√Re + fixed
 * drag + C_L²/(π·e·AR), sink V·C_D/C_L. Taken for shallow glides, where the lift carries the weight: with a glide ratio of 5
 * the sink reads 3 % high. Prandtl's induced drag; the profile drag is an estimate for thin sections at Reynolds numbers of
 * some thousands to 200,000.
 */
export function glideAt(glider: Glider, lift: number): SteadyGlide {
  const speed = speedAt(glider, lift);
  const drag =
    plateDrag(glider, speed) +
    glider.fixedDrag +
    (lift * lift) / (Math.PI * glider.spanEfficiency * glider.aspectRatio);
  return { lift, drag, speed, sink: (speed * drag) / lift };
}

/** The glide that sinks slowest, √(2mg/(ρS))·C_D/C_L^1.5 at its least, over lift coefficients up to the usable one. */
export function minimumSink(glider: Glider): SteadyGlide {
  return glideAt(glider, liftOfLeast(glider, 1.5));
}

/** The glide that goes furthest, C_D/C_L at its least, over lift coefficients up to the usable one. */
export function bestGlide(glider: Glider): SteadyGlide {
  return glideAt(glider, liftOfLeast(glider, 1));
}

function speedAt({ mass, wingArea, density }: Glider, lift: number): number {
  return Math.sqrt((2 * mass * gravity) / (density * wingArea * lift));
}

function plateDrag({ plateFactor, density, chord, viscosity }: Glider, speed: number): number {
  return plateFactor * 2 * laminarPlateDrag((density * speed * chord) / viscosity);
}

/** Each step leaves at most an eighth of the error: this is far more than double precision needs. */
const steps = 40;

/**
 * Lift coefficient at which C_D/C_L^p is least, 1/4 < p < 2. Speed goes with C_L^−½, so the profile drag is a·C_L^¼ and the
 * slope is zero where C_L²/(π·e·AR) = ((p − ¼)·a·C_L^¼ + p·C_fixed)/(2 − p). In ln C_L the function is a sum of exponentials,
 * hence convex: there is one minimum, and beyond a limit below it the limit is best. The right-hand side grows with at most
 * the fourth root of C_L, so putting C_L in and solving for the next one closes in from any start.
 */
function liftOfLeast(glider: Glider, power: number): number {
  const plate = (power - 0.25) * plateDrag(glider, speedAt(glider, 1));
  const fixed = power * glider.fixedDrag;
  const scale = (Math.PI * glider.spanEfficiency * glider.aspectRatio) / (2 - power);
  const next = (lift: number) => Math.sqrt(scale * (plate * Math.sqrt(Math.sqrt(lift)) + fixed));
  const { usableLift } = glider;
  if (next(usableLift) >= usableLift) return usableLift;
  let lift = Math.min(1, usableLift);
  for (let step = 0; step < steps; step++) {
    const better = next(lift);
    if (Math.abs(better - lift) <= 1e-15 * lift) break;
    lift = better;
  }
  return lift;
}
