import type { BoardLine } from './board-line.ts';
import type { BoardView } from './board-view.ts';

/**
 * The lines in the order of a view. What is equal keeps the order of the places, and who has nothing in the column
 * comes last whichever way it is sorted. Within a division the places are those of the division.
 */
export function sortedLines<Line extends BoardLine>(lines: readonly Line[], view: BoardView): Line[] {
  const { column, largestFirst } = view.sort;
  const sign = largestFirst ? -1 : 1;
  const position = (line: Line) =>
    view.division === null ? line.position : (line.divisions.get(view.division) ?? line.position);
  const value = (line: Line) => (column === 'place' ? position(line) : line.values.get(column));
  return lines.toSorted((a, b) => compared(value(a), value(b), sign) || position(a) - position(b));
}

function compared(a: number | string | undefined, b: number | string | undefined, sign: 1 | -1): number {
  if (a === undefined || b === undefined) return Number(a === undefined) - Number(b === undefined);
  return a === b ? 0 : a < b ? -sign : sign;
}
