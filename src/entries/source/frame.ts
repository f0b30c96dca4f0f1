import { problemOver, type Text } from '../problems/make-problem.ts';
import type { Problem } from '../problems/problem.ts';
import { lineEnd } from './line-index.ts';

const accepted = 'a first line of exactly `---`, the fields, and a line of exactly `---`';

/**
 * Why a text has no front matter that every splitter would find in the same place; null where it has. The first line is
 * exactly `---` (nothing after it names a language), and the next line that begins with `---` is exactly that.
 */
export function checkFrame(text: Text): Problem | null {
  const end = lineEnd(text.text, 0);
  const first = text.text.slice(0, end);
  if (first !== '---')
    return problemOver(text, 0, end, 'no-front-matter', {
      message: `The file must begin with the line \`---\`, alone and without spaces; its first line is ${quoted(first)}.`,
      found: first.slice(0, 80),
      accepted,
      suggestion: '---',
    });
  const closing = text.text.indexOf('\n---', end);
  if (closing === -1)
    return problemOver(text, 0, end, 'front-matter-not-closed', {
      message:
        'The front matter has no end: put a line `---`, alone and without spaces, between the fields and the text.',
      accepted,
    });
  const closingEnd = lineEnd(text.text, closing + 1);
  const line = text.text.slice(closing + 1, closingEnd);
  if (line === '---') return null;
  return problemOver(text, closing + 1, closingEnd, 'front-matter-not-closed', {
    message: `The line that ends the front matter must be \`---\`, alone and without spaces; it is ${quoted(line)}.`,
    found: line.slice(0, 80),
    accepted,
    suggestion: '---',
  });
}

function quoted(line: string): string {
  return line === '' ? 'empty' : `"${line.length > 40 ? `${line.slice(0, 40)}…` : line}"`;
}
