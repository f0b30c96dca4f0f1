import type { Point } from './thinned.ts';

/** The height of a line where it first passes a place, interpolated; null where it never does. */
export function readLine(points: readonly Point[], x: number): number | null {
  for (let index = 0; index < points.length; index++) {
    const point = points[index]!;
    if (point.x === x) return point.y;
    const next = points[index + 1];
    if (next === undefined || point.x < x === next.x < x || next.x === x) continue;
    return point.y + ((next.y - point.y) * (x - point.x)) / (next.x - point.x);
  }
  return null;
}
