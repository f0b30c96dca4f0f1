import type { TorqueTest } from '../model/batch.ts';
import type { LineChart, OtherUnit } from './line-chart.ts';
import { readLine } from './read-line.ts';
import type { Point } from './thinned.ts';
import { multiples, tickStep } from './ticks.ts';

/** A torque test's readings, from wound to slack: turns still in across, torque in N·mm up. Null where it was not read. */
export function torqueLine({ points }: Pick<TorqueTest, 'points'>): readonly Point[] | null {
  return points === null ? null : points.map(({ turns, torque }) => ({ x: turns, y: 1000 * torque }));
}

/** The most turns and the largest torque of several tests. */
export function torqueReach(tests: readonly (readonly Point[])[]): Point {
  let x = 0;
  let y = 0;
  for (const points of tests)
    for (const point of points) {
      x = Math.max(x, point.x);
      y = Math.max(y, point.y);
    }
  return { x, y };
}

/** The chart of one torque test or log; `reach` is shared by all of the batch, `imperial` is the other unit of torque. */
export function torqueChart(
  points: readonly Point[],
  reach: Point,
  words: { readonly turns: string; readonly torque: string },
  imperial: OtherUnit | null = null,
): LineChart {
  return {
    across: { label: words.turns, start: 0, most: reach.x },
    up: { label: words.torque, start: 0, most: reach.y, imperial },
    lines: [{ name: null, kind: 'out', points }],
    mark: null,
    window: null,
    level: null,
    working: null,
  };
}

/** The torque at round numbers of turns, and at the top. */
export function torqueReadings(
  points: readonly Point[],
): readonly { readonly turns: number; readonly torque: number | null }[] {
  const top = points[0];
  if (top === undefined) return [];
  const round = top.x > 0 ? multiples(tickStep(top.x, 6), 0, top.x) : [];
  return [...round.filter((turns) => turns < top.x), top.x]
    .map((turns) => ({ turns, torque: readLine(points, turns) }))
    .filter(({ torque }) => torque !== null);
}
