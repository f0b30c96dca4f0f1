import { positionAt } from '../source/line-index.ts';
import { locate } from '../source/locate.ts';
import type { Path, SourceDocument } from '../source/source.ts';
import type { Place, Problem } from './problem.ts';
import { type ProblemCode, problemCodes } from './problem-codes.ts';

/** What a problem says; everything but its place and its severity, which the code decides. */
export interface ProblemFields {
  /** A full sentence that names the field, quotes what was found and says what to do. */
  readonly message: string;
  readonly found?: string | null;
  readonly accepted?: string | null;
  readonly suggestion?: string | null;
  readonly related?: Problem['related'];
}

/** The part of a document that places are worked out from. */
export type Text = Pick<SourceDocument, 'file' | 'text' | 'lines'>;

/** A problem at the key or the value of a field. */
export function problemAt(
  source: SourceDocument,
  path: Path,
  part: 'key' | 'value',
  code: ProblemCode,
  fields: ProblemFields,
): Problem {
  return problemIn(locate(source, path, part), code, fields);
}

/** A problem over a stretch of the text, given by offsets. */
export function problemOver(
  text: Text,
  start: number,
  end: number,
  code: ProblemCode,
  fields: ProblemFields,
): Problem {
  return problemIn(placeOver(text, start, end), code, fields);
}

/** A problem of a file as a whole; it stands at the top. */
export function problemOf(file: string, code: ProblemCode, fields: ProblemFields): Problem {
  return problemIn({ file, line: 1, column: 1, endLine: 1, endColumn: 1 }, code, fields);
}

/** The place of a stretch of the text, given by offsets. */
export function placeOver(text: Text, start: number, end: number): Place {
  const from = positionAt(text.lines, start);
  const to = positionAt(text.lines, Math.max(start, end));
  return { file: text.file, line: from.line, column: from.column, endLine: to.line, endColumn: to.column };
}

/** A problem at a place that is already known. */
export function problemIn(place: Place, code: ProblemCode, fields: ProblemFields): Problem {
  return {
    code,
    severity: problemCodes[code].severity,
    ...place,
    message: fields.message,
    found: fields.found ?? null,
    accepted: fields.accepted ?? null,
    suggestion: fields.suggestion ?? null,
    related: fields.related ?? null,
  };
}
