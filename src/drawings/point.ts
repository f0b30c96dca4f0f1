/** Metres on an aircraft: x backwards from the wing's leading edge at the centre line, y to the right of it. On paper: x to the right, y downwards. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** Both halves of an outline of which the right one is given from the centre line out and back. */
export function mirrored(right: readonly Point[]): Point[] {
  return [...right, ...right.toReversed().map(({ x, y }) => ({ x, y: 0 - y }))];
}
