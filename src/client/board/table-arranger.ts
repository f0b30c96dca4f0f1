import type { SortOrder } from './board-view.ts';
import type { TableLine } from './table-lines.ts';

/** Moves and hides the rows of a board. */
export interface TableArranger {
  readonly order: (lines: readonly TableLine[], sort: SortOrder) => void;
  readonly show: (fitting: ReadonlySet<TableLine>) => void;
}

/** The target line stands among the rows only while they are in the order of their places. */
export function tableArranger(table: HTMLTableElement, lines: readonly TableLine[]): TableArranger {
  const targetLine = table.querySelector<HTMLTableRowElement>('.target-line');
  const first = table.tBodies[0];
  return {
    order: (sorted, { column, largestFirst }) => {
      const byPlace = column === 'place' && !largestFirst;
      if (targetLine !== null) targetLine.hidden = !byPlace;
      const parts = new Map<Element, HTMLTableRowElement[]>();
      for (const { row, home } of sorted) {
        const part = byPlace ? home : (first ?? home);
        const rows = parts.get(part) ?? [];
        rows.push(row);
        parts.set(part, rows);
      }
      for (const [part, rows] of parts) part.append(...rows);
    },
    show: (fitting) => {
      for (const line of lines) {
        const hidden = !fitting.has(line);
        if (line.row.hidden !== hidden) line.row.hidden = hidden;
      }
    },
  };
}
