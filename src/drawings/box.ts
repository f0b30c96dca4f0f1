import type { Point } from './point.ts';

/** A rectangle of the paper. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** Whether two boxes share room; boxes that only touch do not. */
export function overlap(one: Box, other: Box): boolean {
  return one.left < other.right && other.left < one.right && one.top < other.bottom && other.top < one.bottom;
}

/** The box around points, wider by a margin on every side. */
export function boxAround(points: readonly Point[], margin: number): Box {
  const xs = points.map(({ x }) => x);
  const ys = points.map(({ y }) => y);
  return {
    left: Math.min(...xs) - margin,
    top: Math.min(...ys) - margin,
    right: Math.max(...xs) + margin,
    bottom: Math.max(...ys) + margin,
  };
}

/** How long a piece of a line each small box along it covers. */
const piece = 6;

/** Small boxes along a line of several points: what stands in a corner between slanting lines is free. */
export function boxesAlong(points: readonly Point[], margin: number): Box[] {
  return points.slice(1).flatMap((to, index) => {
    const from = points[index] ?? to;
    const count = Math.max(1, Math.min(400, Math.ceil(Math.hypot(to.x - from.x, to.y - from.y) / piece)));
    const at = (share: number) => ({
      x: from.x + share * (to.x - from.x),
      y: from.y + share * (to.y - from.y),
    });
    return Array.from({ length: count }, (_, step) =>
      boxAround([at(step / count), at((step + 1) / count)], margin),
    );
  });
}
