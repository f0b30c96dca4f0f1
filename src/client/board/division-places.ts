import type { TableLine } from './table-lines.ts';

/** Where a row tells of its place: the number, and how it came about. */
interface ToldPlace {
  readonly number: string;
  readonly how: readonly Node[];
}

/** The tables of the divisions, as they stand below the board: by division, then by entry, in the order of places. */
export type DivisionRows = ReadonlyMap<string, ReadonlyMap<string, HTMLTableRowElement>>;

/** Finds the tables of the divisions of a page. */
export function divisionRows(page: ParentNode): DivisionRows {
  const tables = [...page.querySelectorAll<HTMLElement>('[data-division]')];
  return new Map(
    tables.map((table) => [
      table.dataset.division ?? '',
      new Map(
        [...table.querySelectorAll<HTMLTableRowElement>('tr[data-entry]')].map((row) => [
          row.dataset.entry ?? '',
          row,
        ]),
      ),
    ]),
  );
}

/** For each entry the divisions it has a place in, with its position there from 0. */
export function divisionPositions(divisions: DivisionRows): Map<string, Map<string, number>> {
  const positions = new Map<string, Map<string, number>>();
  for (const [division, rows] of divisions) {
    let position = 0;
    for (const entry of rows.keys()) {
      const known = positions.get(entry) ?? new Map<string, number>();
      positions.set(entry, known.set(division, position));
      position += 1;
    }
  }
  return positions;
}

/** Gives a function that puts the places of a division into rows of the board; of none, those of the whole board. */
export function placeWriter(
  divisions: DivisionRows,
): (lines: readonly TableLine[], division: string | null) => void {
  const whole = new Map<string, ToldPlace>();
  const told = new Map<string, string>();
  return (lines, division) => {
    for (const { entry, row } of lines) {
      if ((told.get(entry) ?? null) === division) continue;
      const overall = whole.get(entry) ?? toldIn(row);
      whole.set(entry, overall);
      const other = division === null ? undefined : divisions.get(division)?.get(entry);
      tell(row, other === undefined ? overall : copied(toldIn(other)));
      if (division === null) told.delete(entry);
      else told.set(entry, division);
    }
  };
}

function toldIn(row: HTMLTableRowElement): ToldPlace {
  return {
    number: row.querySelector('.place')?.textContent ?? '',
    how: [...(row.querySelector('.of-place')?.childNodes ?? [])],
  };
}

function copied({ number, how }: ToldPlace): ToldPlace {
  return { number, how: how.map((node) => node.cloneNode(true)) };
}

function tell(row: HTMLTableRowElement, { number, how }: ToldPlace): void {
  const place = row.querySelector('.place');
  if (place !== null) place.textContent = number;
  row.querySelector('.of-place')?.replaceChildren(...how);
}
