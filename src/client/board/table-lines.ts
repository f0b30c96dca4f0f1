import type { BoardLine } from './board-line.ts';
import type { SortColumn } from './board-view.ts';
import { type DivisionRows, divisionPositions } from './division-places.ts';
import { foldedLetters } from './folded-letters.ts';

/** A line of the board with the elements that show it. */
export interface TableLine extends BoardLine {
  readonly row: HTMLTableRowElement;
  /** The part of the table it stands in by place: above or below the target line. */
  readonly home: Element;
  readonly name: string;
  /** False for an aircraft of a final result that nobody can read any more: it has no page to compare. */
  readonly comparable: boolean;
}

/** Reads the table as the build wrote it: numbers from `data-value`, the rest from what stands there. */
export function tableLines(table: HTMLTableElement, divisions: DivisionRows): TableLine[] {
  const positions = divisionPositions(divisions);
  const columns = [...table.querySelectorAll<HTMLElement>('thead th[data-column]')].map(
    ({ dataset }) => dataset.column as SortColumn,
  );
  return [...table.querySelectorAll<HTMLTableRowElement>('tr[data-entry]')].map((row, position) => {
    const cells = [...row.cells];
    const text = (column: SortColumn) => {
      const cell = cells[columns.indexOf(column)];
      return (cell?.querySelector(':scope:is(th) > a')?.textContent ?? cell?.textContent ?? '').trim();
    };
    const name = text('aircraft');
    const who = text('builders');
    const values = new Map<SortColumn, number | string>([
      ['aircraft', foldedLetters(name)],
      ['builders', foldedLetters(who)],
      ['flights', Number(text('flights'))],
    ]);
    columns.forEach((column, index) => {
      const value = cells[index]?.dataset.value;
      if (!values.has(column) && value !== undefined) values.set(column, Number(value));
    });
    const entry = row.dataset.entry ?? '';
    return {
      entry,
      position,
      values,
      letters: foldedLetters(`${name} ${who}`),
      builders: (cells[columns.indexOf('builders')]?.dataset.value ?? '').split(' '),
      control: row.dataset.control ?? null,
      divisions: positions.get(entry) ?? new Map(),
      row,
      home: row.parentElement ?? table,
      name,
      comparable: row.dataset.control !== undefined,
    };
  });
}
