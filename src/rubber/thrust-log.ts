import type { ThrustPoint } from '../model/bench-log.ts';

/** Why nothing was taken off as drift. */
export type NoDrift = 'uneven end' | 'nothing would be left';

/** A thrust log read: its own zero taken off, and the part of it in which the motor ran. */
export interface ThrustRun {
  /** What the rig read at rest, N; taken off every reading. 0 where `noDrift` says why none was. */
  readonly drift: number;
  readonly noDrift: NoDrift | null;
  /** The highest thrust, N, corrected for drift. */
  readonly peak: number;
  /** Start and end of the run, s, and every corrected reading between. */
  readonly run: readonly ThrustPoint[];
  /** The log begins, or ends, with the motor running: the run is then cut off there. */
  readonly cutOff: { readonly start: boolean; readonly end: boolean };
  /** Mean time between two readings, s. */
  readonly timeStep: number;
}

/** The motor rests during this last part of a log, as a share of its duration. */
const restShare = 0.05;
/** Readings at rest lie within this share of the peak of each other. */
const restSpread = 0.02;
/** The motor runs while it pulls more than this share of the peak. */
const runShare = 0.05;

/**
 * Takes a thrust log apart. Drift is the median of the last 5 % of the duration, where the readings there lie within 2 % of
 * the peak of each other; else none is taken off. The run lasts from the first upward to the last downward crossing of
 * 5 % of the corrected peak, interpolated between readings. Null where the log shows no thrust at all. Common practice,
 * no source; it is what the figures of thrust are defined by.
 *
 * @param points two or more, in the order of time
 */
export function thrustRun(points: readonly ThrustPoint[]): ThrustRun | null {
  const first = points[0];
  const last = points.at(-1);
  if (first === undefined || last === undefined || last.time <= first.time) return null;
  const { drift, noDrift } = driftOf(points, last.time - restShare * (last.time - first.time));
  const corrected =
    drift === 0 ? points : points.map(({ time, thrust }) => ({ time, thrust: thrust - drift }));
  const peak = highest(corrected);
  if (peak <= 0) return null;
  return {
    drift,
    noDrift,
    peak,
    ...runAbove(corrected, runShare * peak),
    timeStep: (last.time - first.time) / (points.length - 1),
  };
}

/** How long the motor ran, s. */
export function runTime({ run }: ThrustRun): number {
  return run.at(-1)!.time - run[0]!.time;
}

/** ∫T dt over the run, N·s; readings below zero count as such. */
export function thrustImpulse(run: ThrustRun): number {
  return integrateRun(run, (thrust) => thrust);
}

/** ∫f dt over the run for what follows from the thrust at each reading, such as a power: trapezoid between the readings. */
export function integrateRun({ run }: ThrustRun, of: (thrust: number) => number): number {
  let sum = 0;
  for (let index = 1; index < run.length; index++) {
    const a = run[index - 1]!;
    const b = run[index]!;
    sum += ((of(a.thrust) + of(b.thrust)) / 2) * (b.time - a.time);
  }
  return sum;
}

function driftOf(points: readonly ThrustPoint[], from: number): Pick<ThrustRun, 'drift' | 'noDrift'> {
  const rest = points.filter(({ time }) => time >= from).map(({ thrust }) => thrust);
  rest.sort((a, b) => a - b);
  const middle = median(rest);
  const peak = highest(points) - middle;
  if (peak <= 0) return { drift: 0, noDrift: 'nothing would be left' };
  if (rest.at(-1)! - rest[0]! > restSpread * peak) return { drift: 0, noDrift: 'uneven end' };
  return { drift: middle, noDrift: null };
}

function runAbove(points: readonly ThrustPoint[], threshold: number): Pick<ThrustRun, 'run' | 'cutOff'> {
  const first = points.findIndex(({ thrust }) => thrust >= threshold);
  const last = points.findLastIndex(({ thrust }) => thrust >= threshold);
  const before = points[first - 1];
  const after = points[last + 1];
  return {
    run: [
      ...(before === undefined ? [] : [crossing(before, points[first]!, threshold)]),
      ...points.slice(first, last + 1),
      ...(after === undefined ? [] : [crossing(points[last]!, after, threshold)]),
    ],
    cutOff: { start: before === undefined, end: after === undefined },
  };
}

function crossing(a: ThrustPoint, b: ThrustPoint, threshold: number): ThrustPoint {
  const share = (threshold - a.thrust) / (b.thrust - a.thrust);
  return { time: a.time + share * (b.time - a.time), thrust: threshold };
}

function highest(points: readonly ThrustPoint[]): number {
  return points.reduce((most, { thrust }) => Math.max(most, thrust), Number.NEGATIVE_INFINITY);
}

/** Of a sorted list that is not empty. */
function median(sorted: readonly number[]): number {
  const half = sorted.length / 2;
  return (sorted[Math.ceil(half) - 1]! + sorted[Math.floor(half)]!) / 2;
}
