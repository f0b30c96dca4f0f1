import type { ChangedFlight } from '../../src/almanac/review/changed-flights.ts';
import type { ChangedValue } from '../../src/almanac/review/changed-values.ts';
import type { MovedFigure } from '../../src/almanac/review/moved-figures.ts';
import type { ReadBack } from '../../src/almanac/review/read-back.ts';
import type { ReviewedEntry } from '../../src/almanac/review/review.ts';
import { figureOrder } from '../../src/components/figure-groups.ts';
import { measureOfFigure } from '../../src/components/measure.ts';
import { valueWithU } from '../../src/components/number-text.ts';
import { figureName } from '../../src/components/rule-sentences.ts';
import { unitsOfFigure } from '../../src/components/units-shown.ts';
import { type Figure, isPresent } from '../../src/figures/figure.ts';
import { plainTypography } from '../../src/quantities/typography.ts';
import { words } from '../../src/words.ts';
import { bare, quoted } from './review-concerns.ts';
import { type ReviewPart, type ReviewSection, secondsTold, type Telling } from './review-told.ts';

const say = words.review;

/** What a change does to one aircraft, for who wants to know all of it. */
export function entryTold(entry: ReviewedEntry, handedIn: string, telling: Telling): ReviewSection {
  const { quote, most } = telling;
  const ofFlights = entry.flights.flatMap((flight) => flight.values);
  // Its number names the flight already.
  const values = [
    ...entry.values,
    ...ofFlights.filter(({ field }) => !field.startsWith('`number` in flight')),
  ];
  const remarks = [
    ...(entry.was === null ? [] : [say.folder(quote(entry.was), quote(entry.entry))]),
    ...(entry.change === 'added' && entry.entered !== null && entry.entered !== handedIn
      ? [say.entered(entry.entered, handedIn)]
      : []),
    ...(entry.text ? [`${say.change.changed}: ${say.textChanged}`] : []),
  ];
  return {
    title: `${quote(entry.name)} (${quote(entry.challenge)}): ${say.change[entry.change]}`,
    folded: true,
    parts: [
      ...lines(null, remarks, most),
      ...table(
        say.headings.flights,
        [say.columns.flight, say.columns.date, say.columns.time, say.columns.status, say.columns.change],
        entry.flights.map(flightRow),
        most,
      ),
      ...valuesTold(values, telling),
      ...table(
        say.headings.figures,
        [say.columns.figure, say.columns.before, say.columns.after],
        [...entry.figures].sort((a, b) => figureOrder(a.id) - figureOrder(b.id)).map(figureRow),
        most,
      ),
      ...lines(say.headings.assumptions, entry.assumptions.map(telling.sentence), most),
      ...lines(
        say.headings.attached,
        entry.attached.map(({ file, change }) => `${quote(file)}: ${say.change[change]}`),
        most,
      ),
    ],
  };
}

/** Values with how they were understood, as one table; nothing where there are none. */
export function valuesTold(values: readonly ChangedValue[], { quote, most }: Telling): ReviewPart[] {
  return table(
    say.headings.values,
    [say.columns.field, say.columns.before, say.columns.after, say.columns.read],
    values.map(({ field, before, after, read }) => [
      quote(bare(field)),
      quoted(before, quote),
      quoted(after, quote),
      understood(read),
    ]),
    most,
  );
}

/** A table of so many rows, and how many more there are. */
export function table(
  heading: string | null,
  columns: readonly string[],
  rows: readonly (readonly string[])[],
  most: number,
): ReviewPart[] {
  if (rows.length === 0) return [];
  const left = rows.length - most;
  // On a phone a column that says nothing costs those that do their room.
  const told = columns.map((_, index) => index === 0 || rows.some((row) => says(row[index])));
  const only = (cells: readonly string[]) => cells.filter((_, index) => told[index]);
  const kept = only(columns);
  const rest = left <= 0 ? [] : [[say.more(left), ...kept.slice(1).map(() => '')]];
  return [{ heading, columns: kept, rows: [...rows.slice(0, most).map(only), ...rest] }];
}

function says(cell: string | undefined): boolean {
  return cell !== undefined && cell !== '' && cell !== say.none;
}

/** A list of so many lines, and how many more there are. */
export function lines(heading: string | null, all: readonly string[], most: number): ReviewPart[] {
  if (all.length === 0) return [];
  const left = all.length - most;
  return [{ heading, lines: left <= 0 ? all : [...all.slice(0, most), say.more(left)] }];
}

function flightRow({ number, was, change, before, after }: ChangedFlight): string[] {
  const both = (write: (side: NonNullable<typeof after>) => string) => {
    const [then, now] = [before, after].map((side) => (side === null ? null : write(side)));
    if (then === null || then === undefined || then === now) return now ?? say.none;
    return now === null || now === undefined ? then : `${then} → ${now}`;
  };
  return [
    was === null ? String(number) : `${was} → ${number}`,
    both(({ date }) => date),
    both(({ seconds }) => secondsTold(seconds)),
    both(({ status }) => words.status[status]),
    say.change[change],
  ];
}

function figureRow({ id, motor, before, after }: MovedFigure): string[] {
  const name = figureName(id);
  return [motor === null ? name : `${name}, motor ${motor + 1}`, figureText(before), figureText(after)];
}

function figureText(figure: Figure | null): string {
  return isPresent(figure ?? undefined) && figure !== null && 'value' in figure
    ? measureOfFigure(figure).metric
    : say.none;
}

/** How values were understood, where that reads otherwise than what was written. */
function understood(read: readonly ReadBack[]): string {
  const told = read.map((one) => ({ text: readText(one), same: asWritten(one) }));
  if (told.every(({ same }) => same)) return told.length === 0 ? '' : say.asWritten;
  return told.map(({ text }) => text).join(', ');
}

function readText({ kind, value, u }: ReadBack): string {
  return valueWithU(value, u ?? 0, kind, unitOf({ kind, value }));
}

/** The unit of the pages, and the larger one of the same system where a number would have more than four digits. */
function unitOf({ kind, value }: Pick<ReadBack, 'kind' | 'value'>): string {
  if (kind === 'length' && Math.abs(value) >= 1) return 'm';
  if (kind === 'mass' && Math.abs(value) >= 1) return 'kg';
  return unitsOfFigure('', kind).metric;
}

/** Whether the very number and unit stand in the file. */
function asWritten(read: ReadBack): boolean {
  const same = (text: string) =>
    plainTypography(text)
      .replace(/(\d\.\d*?)0+(?!\d)/g, '$1')
      .replace(/\.(?!\d)/g, '')
      .replaceAll(' ', '');
  return same(read.written) === same(readText(read));
}
