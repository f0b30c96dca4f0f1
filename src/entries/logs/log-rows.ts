import { problemOver, type Text } from '../problems/make-problem.ts';
import type { Problem } from '../problems/problem.ts';
import type { ProblemCode } from '../problems/problem-codes.ts';
import { forbiddenCharacters } from '../source/forbidden-characters.ts';
import { limits } from '../source/limits.ts';
import { lineEnd, lineStarts, positionAt } from '../source/line-index.ts';
import { cellsOf, decimalMarkOf, numberIn, separatorOf } from './delimited.ts';
import { type Column, type FoundColumn, type HeaderFault, readHeading } from './log-header.ts';

/** The values of one row in SI, by the name of their column. */
export type LogRow = Readonly<Record<string, number>>;

/** What must hold for a row, given the one before it; null where it does. */
export type RowRule = (
  row: LogRow,
  before: LogRow | null,
) => { readonly code: ProblemCode; readonly column: string; readonly message: string } | null;

export interface LogRows {
  /** In the order of the file; null where anything is wrong. */
  readonly rows: readonly LogRow[] | null;
  /** Relative uncertainties that the header states, by the name of the column. */
  readonly calibrations: ReadonlyMap<string, number>;
  readonly problems: readonly Problem[];
}

const mostProblems = 10;

/** A line that says nothing; tables leave rows of bare separators behind. */
const blank = /^[\s,;]*$/;

/**
 * Reads a delimited log. Each group of columns must be there with one of its members; further columns are ignored, and so
 * are empty lines. Each problem names row (its line in the file) and column.
 */
export function readLogRows(
  file: string,
  written: string,
  groups: readonly (readonly Column[])[],
  rules: readonly RowRule[],
): LogRows {
  const whole = written.charCodeAt(0) === 0xfeff ? written.slice(1) : written;
  const text: Text = { file, text: whole, lines: lineStarts(whole) };
  const none = { rows: null, calibrations: new Map<string, number>() };
  const strange = forbiddenCharacters(whole, 1)[0];
  if (strange !== undefined) {
    const { line } = positionAt(text.lines, strange.index);
    const message = `Row ${line} of the log holds the character ${strange.name} (${strange.reason}): delete it.`;
    return {
      ...none,
      problems: [problemOver(text, strange.index, strange.index + strange.length, 'log-text', { message })],
    };
  }
  if (text.lines.length > limits.logRows + 2) return { ...none, problems: [tooManyRows(text)] };
  const header = readHeader(text, groups);
  if (header.problems.length > 0) return { ...none, problems: header.problems };
  const { rows, problems } = readRows(text, header, rules);
  const calibrations = new Map(
    header.columns.flatMap(({ column, calibration }) =>
      calibration === null ? [] : [[column.name, calibration] as const],
    ),
  );
  return { rows: problems.length > 0 ? null : rows, calibrations, problems };
}

interface Header {
  readonly columns: readonly FoundColumn[];
  readonly separator: string;
  /** How many cells the header has, with those of columns that are not needed. */
  readonly cells: number;
  /** Index of the header's line. */
  readonly line: number;
  readonly problems: readonly Problem[];
}

function readHeader(text: Text, groups: readonly (readonly Column[])[]): Header {
  const line = Math.max(
    0,
    text.lines.findIndex((start) => text.text.slice(start, lineEnd(text.text, start)).trim() !== ''),
  );
  const start = text.lines[line] ?? 0;
  const end = lineEnd(text.text, start);
  const written = text.text.slice(start, end);
  const separator = separatorOf(written);
  const wanted = groups.flat();
  const problems: Problem[] = [];
  const columns: FoundColumn[] = [];
  const faults: HeaderFault[] = [];
  const cells = cellsOf(written, separator);
  for (const [index, cell] of cells.entries()) {
    const found = readHeading(cell, index, wanted);
    if (found === null) continue;
    if ('message' in found) faults.push(found);
    else if (columns.some(({ column }) => column === found.column))
      problems.push(
        problemOver(text, start, end, 'log-header', {
          message: `The column "${cell}" stands twice in the header: keep one.`,
          found: cell,
        }),
      );
    else columns.push(found);
  }
  // A heading such as `thrust raw` beside `thrust [g]` is a further column of the builder's own.
  for (const { index, column, message, accepted } of faults)
    if (!columns.some((found) => found.column === column))
      problems.push(
        problemOver(text, start, end, 'log-header', { message, found: cells[index] ?? null, accepted }),
      );
  if (problems.length === 0) problems.push(...missingColumns(text, start, end, groups, columns));
  return { columns, separator, cells: cells.length, line, problems };
}

function missingColumns(
  text: Text,
  start: number,
  end: number,
  groups: readonly (readonly Column[])[],
  columns: readonly FoundColumn[],
): Problem[] {
  const accepted = groups.map(namesOf).join(' and ');
  const found = text.text.slice(start, Math.min(end, start + 80));
  const counts = groups.map((group) => columns.filter(({ column }) => group.includes(column)).length);
  const missing = groups.filter((_, at) => counts[at] === 0);
  const doubled = groups.find((_, at) => (counts[at] ?? 0) > 1);
  const header = groups.map(([first]) => first?.example ?? '').join(separatorOf(found));
  const message =
    missing.length > 0
      ? `The first row of the log must name its columns and units, and ${missing.map(namesOf).join(' and ')} ${missing.length === 1 ? 'is' : 'are'} missing; it is "${found}". Write it like \`${header}\`, with the names in the order of the columns and the units you measured in.`
      : doubled === undefined
        ? null
        : `The log has both ${doubled.map(({ name }) => `\`${name}\``).join(' and ')}: keep one of the two columns.`;
  return message === null
    ? []
    : [
        problemOver(text, start, end, 'log-header', {
          message,
          found,
          accepted,
          suggestion: missing.length === groups.length ? header : null,
        }),
      ];
}

function namesOf(group: readonly Column[]): string {
  return group.map(({ example }) => `\`${example}\``).join(' or ');
}

function readRows(
  text: Text,
  header: Header,
  rules: readonly RowRule[],
): { rows: LogRow[]; problems: Problem[] } {
  const rows: LogRow[] = [];
  const problems: Problem[] = [];
  let mark: '.' | ',' | null = null;
  let before: LogRow | null = null;
  for (let line = header.line + 1; line < text.lines.length && problems.length < mostProblems; line++) {
    const start = text.lines[line] ?? 0;
    const end = lineEnd(text.text, start);
    const written = text.text.slice(start, end);
    if (blank.test(written)) continue;
    const cells = cellsOf(written, header.separator);
    const report = (code: ProblemCode, column: string, message: string, found: string) =>
      problems.push(
        problemOver(text, start, end, code, {
          message: `Row ${line + 1}, column "${column}": ${message}.`,
          found,
        }),
      );
    const row: Record<string, number> = {};
    let complete = true;
    for (const { column, index, unit } of header.columns) {
      const cell = cells[index] ?? '';
      const value = numberIn(cell);
      const here = decimalMarkOf(cell);
      const mixed = value !== null && here !== null && mark !== null && here !== mark;
      mark ??= value === null ? null : here;
      if (value !== null && !mixed) {
        row[column.name] = value * unit.factor + (unit.offset ?? 0);
        continue;
      }
      complete = false;
      report('log-value', column.name, whyNoNumber(cell, mixed), cell);
    }
    if (cells.length > header.cells && cells.slice(header.cells).some((cell) => cell !== '')) {
      // `0,5,1,2` may be two numbers or four: what stands in which column cannot be told.
      complete = false;
      report('log-value', columnNames(header), tooManyCells(cells.length, header), written.slice(0, 80));
    }
    if (!complete) continue;
    for (const rule of rules) {
      const fault = rule(row, before);
      if (fault !== null) report(fault.code, fault.column, fault.message, written.slice(0, 80));
    }
    rows.push(row);
    before = row;
  }
  if (problems.length === 0 && rows.length < 2)
    problems.push(
      problemOver(text, 0, 0, 'log-empty', {
        message: `The log has ${rows.length} rows of values; it needs two or more.`,
      }),
    );
  return { rows, problems };
}

function whyNoNumber(cell: string, mixed: boolean): string {
  if (mixed)
    return `"${cell}" is written with another decimal mark than the rows before it; use a point, or a comma, throughout`;
  if (cell === '') return 'nothing is written here; put a number, or leave the row out';
  return `"${cell.slice(0, 40)}" is not a number`;
}

function tooManyCells(count: number, { cells, separator }: Header): string {
  const what = `${count} values stand here, but the header names ${cells} columns`;
  return separator === ','
    ? `${what}; where decimals are written with a comma, put semicolons between the columns`
    : `${what}; take the others out`;
}

function columnNames({ columns }: Header): string {
  return columns.map(({ column }) => column.name).join('" and "');
}

function tooManyRows(text: Text): Problem {
  const found = `${text.lines.length} rows`;
  const message = `The log has ${text.lines.length} rows; at most ${limits.logRows} are accepted. Keep every second or every tenth one.`;
  return problemOver(text, 0, 0, 'log-too-long', {
    message,
    found,
    accepted: `at most ${limits.logRows} rows`,
  });
}
