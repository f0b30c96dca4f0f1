import type { ThrustPoint } from '../model/bench-log.ts';
import { type ThrustRun, thrustRun } from '../rubber/thrust-log.ts';
import type { LineChart, OtherUnit } from './line-chart.ts';
import { readLine } from './read-line.ts';
import type { Point } from './thinned.ts';
import { multiples, tickStep } from './ticks.ts';

/** A thrust log without what the rig read at rest: seconds across, N up; and the run in it. */
export interface ThrustLine {
  readonly points: readonly Point[];
  readonly run: ThrustRun;
}

/** Null where the log shows no thrust. */
export function thrustLine(log: readonly ThrustPoint[]): ThrustLine | null {
  const run = thrustRun(log);
  if (run === null) return null;
  return { points: log.map(({ time, thrust }) => ({ x: time, y: thrust - run.drift })), run };
}

/**
 * The chart of a thrust log: the run shaded, and the mean over it where that is known.
 *
 * @param mean N
 * @param imperial the other unit of force
 */
export function thrustChart(
  { points, run }: ThrustLine,
  mean: number | null,
  words: { readonly time: string; readonly thrust: string; readonly mean: string },
  imperial: OtherUnit | null,
): LineChart {
  return {
    across: { label: words.time, start: Math.min(0, points[0]!.x), most: points.at(-1)!.x },
    up: { label: words.thrust, start: 0, most: run.peak, imperial },
    lines: [{ name: null, kind: 'out', points }],
    mark: null,
    window: { from: run.run[0]!.time, to: run.run.at(-1)!.time },
    level: mean === null ? null : { at: mean, name: words.mean },
    working: null,
  };
}

/** The thrust at round times of the log. */
export function thrustReadings({
  points,
}: ThrustLine): readonly { readonly time: number; readonly thrust: number }[] {
  const [first, last] = [points[0]!.x, points.at(-1)!.x];
  return multiples(tickStep(last - first, 10), first, last).flatMap((time) => {
    const thrust = readLine(points, time);
    return thrust === null ? [] : [{ time, thrust }];
  });
}
