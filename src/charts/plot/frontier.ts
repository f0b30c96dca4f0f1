/** Which end of an axis is the better one. */
export type Better = 'more' | 'less';

interface Valued {
  readonly x: number;
  readonly y: number;
}

/**
 * The points that none of the others beats, the best in x first. One beats another where it is at least as good in both
 * and better in one; so points with the same two values stand or fall together.
 */
export function frontier<T extends Valued>(points: readonly T[], x: Better, y: Better): T[] {
  const inX = x === 'more' ? 1 : -1;
  const inY = y === 'more' ? 1 : -1;
  // From the best in x downwards, only what is better in y than all before it is not beaten.
  const sorted = points.toSorted((a, b) => inX * (b.x - a.x) || inY * (b.y - a.y));
  const unbeaten: T[] = [];
  for (const point of sorted) {
    const last = unbeaten.at(-1);
    const better = last === undefined || inY * (point.y - last.y) > 0;
    const same = last !== undefined && last.x === point.x && last.y === point.y;
    if (better || same) unbeaten.push(point);
  }
  return unbeaten;
}
