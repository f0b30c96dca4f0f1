import type { ChallengeRecord } from '../almanac/almanac.ts';
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

/**
 * `/data/<challenge>.csv`: one row for each flight, by entry and number; the first column names the challenge the row
 * comes from. Quoting as in RFC 4180, lines end with CRLF. A text that a spreadsheet would take for a formula gets an
 * apostrophe in front.
 */
export function challengeCsv(record: ChallengeRecord): string {
  const places = new Map(record.result.standings.map(({ entry, place }) => [entry, place]));
  const rows = record.entries.flatMap(({ entry, flights }) =>
    flights.map(({ judged }) => [
      record.challenge.id,
      entry.id,
      entry.name,
      entry.builders.map(({ handle }) => handle).join(' '),
      places.get(entry.id) ?? null,
      judged.number,
      judged.date,
      significant(judged.official.seconds),
      significant(judged.official.u),
      judged.status,
      judged.reason,
      judged.score === null ? null : significant(judged.score),
      judged.counted ? 'yes' : 'no',
      judged.setup,
    ]),
  );
  return [columns, ...rows].map((row) => `${row.map(csvCell).join(',')}\r\n`).join('');
}

/** One cell: numbers as they are, absence empty, text guarded against formulas and quoted where it must be. */
export function csvCell(value: string | number | null): string {
  if (value === null) return '';
  if (typeof value === 'number') return String(value);
  const guarded = /^[\t\r]|^\s*[=+\-@]/.test(value) ? `'${value}` : value;
  return /[",\r\n]|^\s|\s$/.test(guarded) ? `"${guarded.replaceAll('"', '""')}"` : guarded;
}
