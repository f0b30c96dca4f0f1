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
  let [left, top, right, bottom] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const { x, y } of points) {
    left = Math.min(left, x);
    top = Math.min(top, y);
    right = Math.max(right, x);
    bottom = Math.max(bottom, y);
  }
  return { left: left - margin, top: top - margin, right: right + margin, bottom: bottom + margin };
}

/** How long a piece of a slanting line each small box along it covers. */
const piece = 6;

/**
 * Boxes along a line of several points: small ones where it slants, for what stands in a corner between slanting lines is
 * free; one where it is level or upright.
 */
export function boxesAlong(points: readonly Point[], margin: number): Box[] {
  return points.slice(1).flatMap((to, index) => {
    const from = points[index] ?? to;
    if (from.x === to.x || from.y === to.y) return [boxAround([from, to], margin)];
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
