import { markdownLimits, type TooMuch } from '../markdown-limits.ts';
import { problemOver } from '../problems/make-problem.ts';
import type { Problem } from '../problems/problem.ts';
import { lineEnd } from '../source/line-index.ts';
import type { SourceDocument } from '../source/source.ts';

const marks = 'characters with a meaning in Markdown (* _ [ ] < ` | and their like)';

/** What there may be at most, and what to do where there is more. */
const sentences: Readonly<Record<TooMuch['of'], { readonly what: string; readonly how: string }>> = {
  characters: { what: 'characters', how: 'Shorten it, and put logs into files of their own.' },
  lines: { what: 'lines', how: 'Shorten it, and put logs into files of their own.' },
  marks: { what: marks, how: 'Shorten it, and put logs into files of their own.' },
  marksInPiece: { what: `${marks} without an empty line between them`, how: 'Break it up with empty lines.' },
  linesInPiece: { what: 'lines without an empty line between them', how: 'Break it up with empty lines.' },
  containers: { what: 'items of lists and lines of quotes', how: 'Shorten it.' },
  containersOfLine: { what: 'quotes and lists inside each other', how: 'Take some of them away.' },
  indentation: {
    what: 'columns of white space and marks before the first word of a line',
    how: 'Indent it less.',
  },
  expansion: {
    what: 'characters of addresses and titles that its references stand for',
    how: 'Write shorter addresses and titles, or fewer references.',
  },
  cells: { what: 'cells in its tables', how: 'Make them smaller.' },
};

/** The problem of a text that is not read as Markdown; it stands where the text has too much for the first time. */
export function textAsWritten(source: SourceDocument, { of, at }: TooMuch): Problem {
  const start = source.bodyStart + at;
  const { what, how } = sentences[of];
  const accepted = `at most ${grouped(markdownLimits[of])} ${what}`;
  return problemOver(source, start, lineEnd(source.text, start), 'text-as-written', {
    message: `The text has more in it than is read as Markdown, so it is shown as it was written: it may have ${accepted}. ${how}`,
    accepted,
  });
}

/** Such as 10,000. */
function grouped(count: number): string {
  return String(count).replace(/(?<=\d)(?=(?:\d{3})+$)/g, ',');
}
