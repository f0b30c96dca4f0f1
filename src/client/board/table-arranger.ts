import type { SortOrder } from './board-view.ts';
import type { TableLine } from './table-lines.ts';

/** Shows these lines and no other, in this order. `more` where some that fit are left for later. */
export type TableArranger = (shown: readonly TableLine[], sort: SortOrder, more: boolean) => void;

/**
 * Moves and hides the rows of a board, and touches only those whose look changes: laying out a thousand rows takes a
 * browser longer than a reader likes to wait. The target line stands among the rows only while they are in the order
 * of their places.
 */
export function tableArranger(table: HTMLTableElement, lines: readonly TableLine[]): TableArranger {
  const targetLine = table.querySelector<HTMLTableRowElement>('.target-line');
  const first = table.tBodies[0];
  /** Where each row stands in its part of the table: a higher number is further down. */
  const places = new Map(lines.map((line) => [line, { part: line.home, depth: line.position }]));
  let deepest = lines.length;
  let visible: ReadonlySet<TableLine> = new Set(lines);

  return (shown, { column, largestFirst }, more) => {
    const byPlace = column === 'place' && !largestFirst;
    const parts = new Map<Element, TableLine[]>();
    for (const line of shown) {
      const part = byPlace ? line.home : (first ?? line.home);
      const inPart = parts.get(part);
      if (inPart === undefined) parts.set(part, [line]);
      else inPart.push(line);
    }
    const next = new Set(shown);
    for (const line of visible) if (!next.has(line)) line.row.hidden = true;
    for (const [part, inPart] of parts) {
      const inOrder = inPart.every((line, index) => {
        const before = inPart[index - 1];
        const place = places.get(line);
        return (
          place?.part === part && (before === undefined || (places.get(before)?.depth ?? 0) < place.depth)
        );
      });
      if (!inOrder) {
        part.append(...inPart.map(({ row }) => row));
        for (const line of inPart) {
          deepest += 1;
          places.set(line, { part, depth: deepest });
        }
      }
    }
    for (const line of shown) if (!visible.has(line)) line.row.hidden = false;
    visible = next;
    if (targetLine === null) return;
    const reached = parts.has(targetLine.parentElement ?? table);
    targetLine.hidden = !byPlace || (more && !reached);
  };
}
