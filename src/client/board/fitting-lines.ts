import type { BoardLine } from './board-line.ts';
import type { BoardView } from './board-view.ts';
import { foldedLetters } from './folded-letters.ts';

/** The lines that a view shows, in the order given. Every word sought must stand somewhere in a name. */
export function fittingLines<Line extends BoardLine>(lines: readonly Line[], view: BoardView): Line[] {
  const sought = foldedLetters(view.sought).split(/\s+/);
  return lines.filter(
    (line) =>
      (view.division === null || line.divisions.has(view.division)) &&
      (view.builder === null || line.builders.includes(view.builder)) &&
      (view.control === null || line.control === view.control) &&
      spanFits(line, view) &&
      sought.every((word) => line.letters.includes(word)),
  );
}

/** An aircraft of unknown span fits no range. */
function spanFits({ values }: BoardLine, { spanFrom, spanTo }: BoardView): boolean {
  if (spanFrom === null && spanTo === null) return true;
  const span = values.get('span');
  return typeof span === 'number' && span >= (spanFrom ?? 0) && span <= (spanTo ?? Infinity);
}
