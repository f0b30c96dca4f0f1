import type { StretchTest } from '../model/batch.ts';
import { stretchCurve } from '../rubber/stretch-energy.ts';
import type { LineChart } from './line-chart.ts';
import { readLine } from './read-line.ts';
import type { Point } from './thinned.ts';
import { multiples, tickStep } from './ticks.ts';

/** The two ways of a stretch test: stretch ratio across, force in N of strip of 1 g per metre up. */
export interface StretchWays {
  readonly out: readonly Point[];
  readonly back: readonly Point[];
}

/** The words of a stretch chart. */
export interface StretchWords {
  readonly stretch: string;
  readonly force: string;
  readonly out: string;
  readonly back: string;
  readonly broke: string;
}

/**
 * A test's readings, the force divided by the strip's mass per length (in g/m): so strips of any width compare, without
 * a density, and the area below the curve is J per gram of rubber, since N/(g/m) is J/g. Null where the log was not read.
 */
export function stretchWays({ points, length, mass }: StretchTest): StretchWays | null {
  if (points === null) return null;
  const gramsPerMetre = (1000 * mass.value) / length.value;
  const scaled = (rows: typeof points): Point[] =>
    rows.map(({ ratio, force }) => ({ x: ratio, y: force / gramsPerMetre }));
  const curve = stretchCurve(points);
  return curve === null
    ? { out: scaled(points), back: [] }
    : { out: scaled(curve.out), back: scaled(curve.back) };
}

/** The largest stretch and force of several tests, for charts that are to be compared. */
export function stretchReach(tests: readonly StretchWays[]): Point {
  let x = 1;
  let y = 0;
  for (const { out, back } of tests)
    for (const point of [...out, ...back]) {
      x = Math.max(x, point.x);
      y = Math.max(y, point.y);
    }
  return { x, y };
}

/** The chart of one stretch test; `reach` is shared by all of the batch. */
export function stretchChart(
  { out, back }: StretchWays,
  reach: Point,
  broke: boolean,
  words: StretchWords,
): LineChart {
  const top = out.at(-1);
  return {
    across: { label: words.stretch, start: 1, most: reach.x },
    up: { label: words.force, start: 0, most: reach.y, imperial: null },
    lines: [
      { name: back.length === 0 ? null : words.out, kind: 'out', points: out },
      { name: words.back, kind: 'back', points: back },
    ],
    mark: broke && top !== undefined ? { at: top, name: words.broke } : null,
    window: null,
    level: null,
    working: null,
  };
}

/** What a chart shows, in numbers: the force of both ways at round stretches, and at the top. */
export interface StretchReading {
  readonly ratio: number;
  readonly out: number | null;
  readonly back: number | null;
}

/** The readings of a test at round stretches; at the top the way back begins where it was let back from. */
export function stretchReadings({ out, back }: StretchWays): readonly StretchReading[] {
  const top = out.at(-1);
  if (top === undefined) return [];
  const round = top.x > 1 ? multiples(tickStep(top.x - 1, 6), 1, top.x) : [];
  return [...round.filter((ratio) => ratio < top.x), top.x]
    .map((ratio) => ({ ratio, out: readLine(out, ratio), back: readLine(back, ratio) }))
    .filter((reading) => reading.out !== null || reading.back !== null);
}
