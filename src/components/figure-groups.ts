import { type Figure, type FigureSet, isPresent, type PresentFigure } from '../figures/figure.ts';
import { figureDefinitions } from '../figures/registry.ts';
import { type Measure, measureOfFigure } from './measure.ts';
import { figureName } from './rule-sentences.ts';

/** What a figure is about: the parts into which the figures of an aircraft are sorted, in the order of the page. */
export const figureGroups = {
  airframe: [
    'span',
    'wing-area',
    'mean-chord',
    'mean-aerodynamic-chord',
    'aspect-ratio',
    'effective-dihedral',
    'tail-area',
    'lifting-area',
    'airframe-mass',
    'flying-mass',
    'wing-loading',
  ],
  stability: [
    'tail-volume',
    'fin-volume',
    'decalage',
    'balance-point',
    'neutral-point',
    'static-margin',
    'trim-ballast',
    'spiral-balance',
    'net-torque-offset',
  ],
  rubber: [
    'rubber-mass',
    'rubber-share',
    'skein-mass-check',
    'skein-section',
    'break-turns',
    'wound-share',
    'launch-torque',
    'mean-torque',
    'energy-per-gram-of-rubber',
    'stored-energy',
    'energy-per-gram',
    'energy-height',
  ],
  bench: ['thrust-impulse', 'mean-thrust', 'peak-thrust', 'run-time', 'static-figure-of-merit'],
  glide: [
    'sink-speed',
    'glide-ratio',
    'glide-speed',
    'reynolds-number',
    'power-to-stay-up',
    'thrust-margin',
    'energy-use',
  ],
  time: ['best-time', 'duration-per-turn', 'duration-per-gram-of-rubber', 'predicted-time', 'ceiling-time'],
} as const;

/** `other` holds what none of the groups names, such as the figures of a batch of rubber. */
export type FigureGroup = keyof typeof figureGroups | 'other';

const groupById: ReadonlyMap<string, FigureGroup> = new Map(
  Object.entries(figureGroups).flatMap(([group, ids]) =>
    ids.map((id): [string, FigureGroup] => [id, group as FigureGroup]),
  ),
);

/** The group of a figure; `other` where none names it. */
export function groupOf(id: string): FigureGroup {
  return groupById.get(id) ?? 'other';
}

/** The present figures of one name, with those of each kind of motor side by side. */
export interface FigureRow {
  readonly id: string;
  readonly name: string;
  /** One for the whole aircraft; or one for each kind of motor, null where it cannot be worked out for that one. */
  readonly cells: readonly FigureCell[];
}

/** One figure as text; null where it cannot be worked out. */
export type FigureCell = { readonly figure: PresentFigure; readonly measure: Measure } | null;

export interface FiguresOfGroup {
  readonly group: FigureGroup;
  readonly rows: readonly FigureRow[];
}

/** Figures that could not be worked out for the same reason. */
export interface AbsentLine {
  readonly names: readonly string[];
  readonly reason: string;
}

/** The figures of one aircraft or batch as a page shows them. */
export interface FigureSheet {
  /** One value each; with a single kind of motor, its figures are among them. */
  readonly whole: readonly FiguresOfGroup[];
  /** Those that differ by kind of motor; empty with a single kind. */
  readonly ofMotors: readonly FigureRow[];
  readonly absent: readonly AbsentLine[];
}

const order: ReadonlyMap<string, number> = new Map(
  [...Object.values(figureGroups).flat(), ...figureDefinitions.map(({ id }) => id)]
    .toReversed()
    .map((id, index, all) => [id, all.length - index]),
);

/** The place of a figure in the order of pages. */
export function figureOrder(id: string): number {
  return order.get(id) ?? 0;
}

/** Sorts figures into groups, those of motors into columns, and those that are absent by reason. */
export function figureSheet(figures: FigureSet): FigureSheet {
  const single = figures.motors.length < 2;
  const merged = single ? [...figures.entry, ...(figures.motors[0] ?? [])] : [...figures.entry];
  const rows = sorted(merged.map(([id, figure]) => rowOf(id, [figure])));
  const motorIds = single ? [] : [...new Set(figures.motors.flatMap((motor) => [...motor.keys()]))];
  const ofMotors = sorted(
    motorIds.map((id) =>
      rowOf(
        id,
        figures.motors.map((motor) => motor.get(id)),
      ),
    ),
  );
  const groups = [...Object.keys(figureGroups), 'other'] as FigureGroup[];
  return {
    whole: groups
      .map((group) => ({ group, rows: rows.filter(({ id }) => groupOf(id) === group) }))
      .filter((one) => one.rows.length > 0),
    ofMotors,
    absent: absentLines([
      ...figures.entry.values(),
      ...figures.motors.flatMap((motor) => [...motor.values()]),
    ]),
  };
}

function rowOf(id: string, figures: readonly (Figure | undefined)[]): FigureRow {
  const cells = figures.map((figure) =>
    isPresent(figure) ? { figure, measure: measureOfFigure(figure) } : null,
  );
  return { id, name: figureName(id), cells };
}

/** Rows that hold anything, in the order of the groups. */
function sorted(rows: readonly FigureRow[]): FigureRow[] {
  return rows
    .filter(({ cells }) => cells.some((cell) => cell !== null))
    .toSorted((a, b) => figureOrder(a.id) - figureOrder(b.id));
}

function absentLines(figures: readonly Figure[]): AbsentLine[] {
  const reasons = new Map<string, Set<string>>();
  for (const figure of figures) {
    if (isPresent(figure)) continue;
    const names = reasons.get(figure.absent) ?? new Set();
    reasons.set(figure.absent, names.add(figureName(figure.id)));
  }
  return [...reasons].map(([reason, names]) => ({ reason, names: [...names] }));
}
