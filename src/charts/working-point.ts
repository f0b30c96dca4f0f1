import type { LineChart } from './line-chart.ts';
import { readLine } from './read-line.ts';
import type { Point } from './thinned.ts';

/**
 * A chart with the place on a line where a flight worked. Where the line does not go so far, the place is beside its far end
 * at the height the line has there, and the axis goes on to it.
 *
 * @param x where on the axis across
 * @param u of x, shaded to either side; 0 for none
 */
export function withWorkingPoint(
  chart: LineChart,
  line: readonly Point[],
  x: number,
  u: number,
  name: string,
): LineChart {
  const far = line.reduce<Point | null>(
    (most, point) => (most === null || point.x > most.x ? point : most),
    null,
  );
  const y = readLine(line, x) ?? far?.y;
  if (y === undefined) return chart;
  return {
    ...chart,
    across: { ...chart.across, most: Math.max(chart.across.most, x + u) },
    window: u > 0 ? { from: x - u, to: x + u } : chart.window,
    working: { at: { x, y }, name },
  };
}
