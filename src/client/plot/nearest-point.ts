import type { PlacedPoint } from '../../charts/plot/plot-layout.ts';

/** Farther away than this, nothing is pointed at. In the drawing's own unit. */
const reach = 28;

/** The mark nearest to a place of the drawing; null where none is near. */
export function nearestPoint(points: readonly PlacedPoint[], x: number, y: number): PlacedPoint | null {
  let nearest: PlacedPoint | null = null;
  let least = reach ** 2;
  for (const point of points) {
    const away = (point.x - x) ** 2 + (point.y - y) ** 2;
    if (away > least) continue;
    nearest = point;
    least = away;
  }
  return nearest;
}
