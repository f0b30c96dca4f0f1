import { meanAerodynamicChord } from '../airframe/planform.ts';
import type { Design, Motor, Panel, Tailplane } from '../model/design.ts';

/** Metres: x backwards from the wing's leading edge at the centre line, y to the right of it. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** What the drawing takes because nobody measured it. */
export type Assumption =
  | 'straight-wing'
  | 'tail-proportions'
  | 'motor-places'
  | 'motors-left-out'
  | 'propeller-at-leading-edge'
  | 'facing';

/** A motor's line from its propeller to its rear hook; without hooks or diameter that part is left out. */
export interface MotorShape {
  readonly y: number;
  readonly propellerX: number;
  readonly hookX: number | null;
  readonly radius: number | null;
  readonly assumed: boolean;
}

/** An aircraft seen from above. */
export interface PlanShape {
  readonly wing: readonly Point[];
  /** Lines between panels, on the right half. */
  readonly joints: readonly (readonly [Point, Point])[];
  readonly wingAssumed: boolean;
  readonly tail: { readonly outline: readonly Point[]; readonly assumed: boolean } | null;
  readonly motors: readonly MotorShape[];
  /** Distance of the balance behind the leading edge at the centre line. */
  readonly balance: number | null;
  readonly assumptions: readonly Assumption[];
}

/** Span over chord of a tailplane of which only one of span and area is known. Common practice, no source. */
const tailAspect = 4;

/** The shape in metres; null where neither panels nor a mean chord give the wing a depth. */
export function planShape(design: Design, meanChord: number | null): PlanShape | null {
  const measured = design.wing.panels ?? [];
  const panels = measured.length > 0 ? measured.map(flat) : straight(design.wing.span.value, meanChord);
  const mean = meanAerodynamicChord(panels);
  if (![mean.chord, mean.leadingEdge].every(Number.isFinite) || mean.chord <= 0) return null;
  const { leading, trailing } = edges(panels);
  const quarter = mean.leadingEdge + mean.chord / 4;
  const tail = tailOf(design, quarter);
  const motors = design.motors.flatMap((motor) => motorsOf(motor));
  const { balance } = design;
  const assumptions: Assumption[] = [];
  if (measured.length === 0) assumptions.push('straight-wing');
  if (tail?.assumed) assumptions.push('tail-proportions');
  if (motors.some((motor) => motor.assumed)) assumptions.push('motor-places');
  if (motors.length < design.motors.reduce((sum, { count }) => sum + count, 0))
    assumptions.push('motors-left-out');
  if (motors.length > 0) assumptions.push('propeller-at-leading-edge');
  if (design.motors.some((motor) => motor.faces === null)) assumptions.push('facing');
  return {
    wing: mirrored([...leading, ...trailing.toReversed()]),
    joints: leading.slice(1, -1).map((point, index) => [point, trailing[index + 1] ?? point] as const),
    wingAssumed: measured.length === 0,
    tail,
    motors,
    balance:
      balance === null
        ? null
        : balance.kind === 'share'
          ? mean.leadingEdge + balance.value * mean.chord
          : balance.value,
    assumptions,
  };
}

interface FlatPanel {
  readonly length: number;
  readonly root: number;
  readonly tip: number;
  readonly sweep: number;
  readonly dihedral: number;
}

function flat({ length, root, tip, sweep, dihedral }: Panel): FlatPanel {
  return {
    length: length.value,
    root: root.value,
    tip: tip.value,
    sweep: sweep?.value ?? 0,
    dihedral: dihedral?.value ?? 0,
  };
}

function straight(span: number, chord: number | null): FlatPanel[] {
  return chord === null ? [] : [{ length: span / 2, root: chord, tip: chord, sweep: 0, dihedral: 0 }];
}

function edges(panels: readonly FlatPanel[]): { leading: Point[]; trailing: Point[] } {
  const leading: Point[] = [{ x: 0, y: 0 }];
  const trailing: Point[] = [{ x: panels[0]?.root ?? 0, y: 0 }];
  let x = 0;
  let y = 0;
  for (const panel of panels) {
    y += panel.length * Math.cos(panel.dihedral);
    x += panel.sweep;
    leading.push({ x, y });
    trailing.push({ x: x + panel.tip, y });
  }
  return { leading, trailing };
}

function mirrored(right: readonly Point[]): Point[] {
  const left = right.toReversed().map(({ x, y }) => ({ x, y: -y }));
  return [...right, ...left];
}

function tailOf({ tailplane, layout }: Design, quarter: number): PlanShape['tail'] {
  if (tailplane === null || tailplane.arm === null || layout === 'tailless') return null;
  const size = tailSize(tailplane);
  if (size === null) return null;
  const { span, chord, assumed } = size;
  const front = quarter + (layout === 'canard' ? -1 : 1) * Math.abs(tailplane.arm.value) - chord / 4;
  const y = span / 2;
  const right = [
    { x: front, y },
    { x: front + chord, y },
  ];
  return { outline: mirrored(right), assumed };
}

function tailSize({ span, area }: Tailplane): { span: number; chord: number; assumed: boolean } | null {
  const wide = span?.value ?? (area === null ? 0 : Math.sqrt(area.value * tailAspect));
  if (!(wide > 0)) return null;
  const chord = area === null ? wide / tailAspect : area.value / wide;
  return { span: wide, chord, assumed: span === null || area === null };
}

function motorsOf({ count, at, side, faces, hooks, propeller }: Motor): MotorShape[] {
  const sign = side === 'left' ? -1 : 1;
  const places = (at ?? []).flatMap(({ value }) =>
    value === 0 ? [0] : side === null && count === 2 * (at ?? []).length ? [-value, value] : [sign * value],
  );
  const ys = places.length > 0 ? places : count === 1 ? [0] : [];
  const away = faces === 'pusher' ? -1 : 1;
  return ys.map((y) => ({
    y,
    propellerX: 0,
    hookX: hooks === null ? null : away * hooks.value,
    radius: propeller?.diameter == null ? null : propeller.diameter.value / 2,
    assumed: at === null || at.length === 0,
  }));
}
