import type { Problem } from '../../src/entries/problems/problem.ts';
import { readSource } from '../../src/entries/source/read-source.ts';
import type { SourceDocument } from '../../src/entries/source/source.ts';
import { splitPlain } from '../../src/entries/source/split-plain.ts';
import { understandBatch } from '../../src/entries/understand/batch.ts';
import { understandChallenge } from '../../src/entries/understand/challenge.ts';
import { understandEntry } from '../../src/entries/understand/entry.ts';
import { understandRuling } from '../../src/entries/understand/ruling.ts';

/** Front matter as a file; its first line is line 2. */
export function sourceOf(frontMatter: string, file = 'file.md'): SourceDocument {
  const { source, problems } = readSource(file, `---\n${frontMatter}\n---\nBody.\n`, splitPlain);
  if (source === null || problems.length > 0)
    throw new Error(`unreadable: ${problems.map(({ message }) => message).join(' ')}`);
  return source;
}

/** The smallest valid entry: lines 2 to 7 of the file. */
export const smallestEntry = `name: Plover
builder: amarsh
control: free
wing: { span: 1.2 m }
mass: { airframe: 100 g }
motors: [{ count: 2 }]`;

export function entryOf(frontMatter: string) {
  return understandEntry(sourceOf(frontMatter, 'entry.md'), { challenge: 'long-haul-2027', id: 'plover' });
}

/** The smallest valid challenge: lines 2 to 4 of the file. */
export const smallestChallenge = `title: Long Haul
opens: 2027-03-01
closes: 2027-10-31`;

export function challengeOf(frontMatter: string) {
  return understandChallenge(sourceOf(frontMatter), { id: 'long-haul-2027' });
}

export function rulingOf(frontMatter: string) {
  return understandRuling(sourceOf(frontMatter), { challenge: 'long-haul-2027', entry: 'plover' });
}

export function batchOf(frontMatter: string) {
  return understandBatch(sourceOf(frontMatter), { id: 'fen-a' });
}

/** A problem in one line: place, code, message; then, where there are any, the suggestion and the related place. */
export function told(problem: Problem): string {
  const related =
    problem.related === null
      ? []
      : [`(${problem.related.line}:${problem.related.column} ${problem.related.message})`];
  const suggestion = problem.suggestion === null ? [] : [`-> ${problem.suggestion}`];
  return [
    `${problem.line}:${problem.column} ${problem.code}: ${problem.message}`,
    ...suggestion,
    ...related,
  ].join('\n');
}

export function allTold({ problems }: { readonly problems: readonly Problem[] }): string[] {
  return problems.map(told);
}
