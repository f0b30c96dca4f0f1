/** A point of a drawing or of a diagram. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/**
 * A line with no more points than a drawing can show: of the points that follow one another within one column, the first,
 * the lowest, the highest and the last stay, in their order. So no peak of a long log is lost.
 *
 * @param width of a column, in the unit of x
 */
export function thinned(points: readonly Point[], width: number): readonly Point[] {
  const kept: Point[] = [];
  let start = 0;
  while (start < points.length) {
    const column = Math.floor(points[start]!.x / width);
    let end = start;
    let lowest = start;
    let highest = start;
    while (end + 1 < points.length && Math.floor(points[end + 1]!.x / width) === column) {
      end += 1;
      if (points[end]!.y < points[lowest]!.y) lowest = end;
      if (points[end]!.y > points[highest]!.y) highest = end;
    }
    const places = [...new Set([start, lowest, highest, end])].sort((a, b) => a - b);
    kept.push(...places.map((place) => points[place]!));
    start = end + 1;
  }
  return kept;
}
