import type { ChallengeRecord } from '../almanac/almanac.ts';
import type { JudgedFlight } from '../contest/standing.ts';
import { significant } from '../quantities/decimal.ts';

const columns = [
  'challenge',
  'entry',
  'name',
  'builders',
  'place',
  'flight',
  'date',
  'official time [s]',
  'standard uncertainty [s]',
  'status',
  'reason',
  'score [s]',
  'counted',
  'setup',
];

interface EntryOfTable {
  readonly id: string;
  readonly name: string;
  /** Handles. */
  readonly builders: readonly string[];
}

/**
 * `/data/<challenge>.csv`: one row for each flight, by entry and number; the first column names the challenge the row
 * comes from. Quoting as in RFC 4180, lines end with CRLF. A text that a spreadsheet would take for a formula gets an
 * apostrophe in front. Entries that only a frozen result still knows come last.
 */
export function challengeCsv(record: ChallengeRecord): string {
  const places = new Map(record.result.standings.map(({ entry, place }) => [entry, place]));
  const rowsOf = (entry: EntryOfTable, flights: readonly JudgedFlight[]) =>
    flights.map((flight) => [
      record.challenge.id,
      entry.id,
      entry.name,
      entry.builders.join(' '),
      places.get(entry.id) ?? null,
      flight.number,
      flight.date,
      significant(flight.official.seconds),
      // A flight that only the final result still tells of has kept its time, and nothing of its watches.
      flight.official.u === 0 ? null : significant(flight.official.u),
      flight.status,
      flight.reason,
      flight.score === null ? null : significant(flight.score),
      flight.counted ? 'yes' : 'no',
      flight.setup,
    ]);
  const rows = record.entries.flatMap(({ entry: { id, name, builders }, judged }) =>
    rowsOf({ id, name, builders: builders.map(({ handle }) => handle) }, judged.flights),
  );
  const readable = new Set(record.entries.map(({ entry }) => entry.id));
  const frozenOnly = (record.frozen?.entries ?? [])
    .filter(({ id }) => !readable.has(id))
    .flatMap((entry) => rowsOf(entry, record.result.entries.get(entry.id)?.flights ?? []));
  return [columns, ...rows, ...frozenOnly].map((row) => `${row.map(csvCell).join(',')}\r\n`).join('');
}

/** One cell: numbers as they are, absence empty, text guarded against formulas and quoted where it must be. */
export function csvCell(value: string | number | null): string {
  if (value === null) return '';
  if (typeof value === 'number') return String(value);
  const guarded = /^[\t\r]|^\s*[=+\-@＝＋－＠]/.test(value) ? `'${value}` : value;
  return /[",\r\n]|^\s|\s$/.test(guarded) ? `"${guarded.replaceAll('"', '""')}"` : guarded;
}
