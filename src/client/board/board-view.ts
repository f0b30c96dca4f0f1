/** Columns a board can be sorted by, under the names that stand in addresses. */
export const sortColumns = [
  'place',
  'aircraft',
  'score',
  'builders',
  'span',
  'wing-loading',
  'energy-per-gram',
  'duration-per-turn',
  'flights',
] as const;

export type SortColumn = (typeof sortColumns)[number];

export interface SortOrder {
  readonly column: SortColumn;
  readonly largestFirst: boolean;
}

/** What a visitor asked of a board: everything that stands in its address. */
export interface BoardView {
  readonly sort: SortOrder;
  readonly division: string | null;
  readonly builder: string | null;
  readonly control: string | null;
  /** Metres, ends included. */
  readonly spanFrom: number | null;
  readonly spanTo: number | null;
  /** Words of a name, as typed. */
  readonly sought: string;
  /** Whether every aircraft that fits is listed, and not only the first ones. */
  readonly full: boolean;
  /** Ids of the aircraft ticked for comparison, in the order they were ticked. */
  readonly picked: readonly string[];
}

/** What a board holds, to tell a known value of an address from an unknown one. */
export interface BoardHolds {
  readonly divisions: ReadonlySet<string>;
  readonly builders: ReadonlySet<string>;
  readonly controls: ReadonlySet<string>;
  readonly entries: ReadonlySet<string>;
}

/** So many aircraft stand side by side on the page that compares them. */
export const mostPicked = 4;

/** So many rows are listed at first. */
export const firstRows = 50;

/** The board as it comes: everybody, by place. */
export const wholeBoard: BoardView = {
  sort: { column: 'place', largestFirst: false },
  division: null,
  builder: null,
  control: null,
  spanFrom: null,
  spanTo: null,
  sought: '',
  full: false,
  picked: [],
};

/** Whether two orders are the same. */
export function sameOrder(a: SortOrder, b: SortOrder): boolean {
  return a.column === b.column && a.largestFirst === b.largestFirst;
}

/** Reads the part of an address after "?". What the board does not hold is passed over. */
export function readView(query: string, holds: BoardHolds): BoardView {
  const given = new URLSearchParams(query);
  const known = (name: string, values: ReadonlySet<string>) => {
    const value = given.get(name);
    return value !== null && values.has(value) ? value : null;
  };
  const picked = (given.get('of') ?? '').split(',').filter((entry) => holds.entries.has(entry));
  return {
    sort: readOrder(given.get('sort')),
    division: known('division', holds.divisions),
    builder: known('builder', holds.builders),
    control: known('control', holds.controls),
    spanFrom: readLength(given.get('span-from')),
    spanTo: readLength(given.get('span-to')),
    sought: given.get('q') ?? '',
    full: given.get('rows') === 'all',
    picked: [...new Set(picked)].slice(0, mostPicked),
  };
}

/** The view as the part of an address after "?", empty for the whole board; `readView` gives it back. */
export function writeView(view: BoardView): string {
  const { column, largestFirst } = view.sort;
  const sort = sameOrder(view.sort, wholeBoard.sort) ? null : `${largestFirst ? '-' : ''}${column}`;
  const told: readonly (readonly [string, string | null])[] = [
    ['sort', sort],
    ['division', view.division],
    ['builder', view.builder],
    ['control', view.control],
    ['span-from', view.spanFrom === null ? null : String(view.spanFrom)],
    ['span-to', view.spanTo === null ? null : String(view.spanTo)],
    ['q', view.sought.trim() === '' ? null : view.sought.trim()],
    ['rows', view.full ? 'all' : null],
    ['of', view.picked.length === 0 ? null : view.picked.join(',')],
  ];
  const given = new URLSearchParams();
  for (const [name, value] of told) if (value !== null) given.set(name, value);
  // A comma needs no escape in a query (RFC 3986, 3.4), and reads better without.
  return given.toString().replaceAll('%2C', ',');
}

function readOrder(text: string | null): SortOrder {
  const name = (text ?? '').replace(/^-/, '');
  const column = sortColumns.find((one) => one === name);
  return column === undefined ? wholeBoard.sort : { column, largestFirst: (text ?? '').startsWith('-') };
}

function readLength(text: string | null): number | null {
  const value = text === null || text.trim() === '' ? Number.NaN : Number(text);
  return Number.isFinite(value) && value >= 0 ? value : null;
}
