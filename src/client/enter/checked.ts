import { cutProblems } from '../../entries/problems/cut-problems.ts';
import { byPlace, type Problem } from '../../entries/problems/problem.ts';
import { toPlain } from '../../entries/source/locate.ts';
import { readSource } from '../../entries/source/read-source.ts';
import type { Plain, SourceDocument } from '../../entries/source/source.ts';
import { splitPlain } from '../../entries/source/split-plain.ts';
import { understandEntry } from '../../entries/understand/entry.ts';
import type { Entry } from '../../model/entry.ts';

/** A text as `check` sees it, without what other files say. */
export interface Checked {
  /** Null where its fields cannot be made out. */
  readonly source: SourceDocument | null;
  /** The fields as written; null where they cannot be made out. */
  readonly plain: Plain | null;
  /** Null where anything is wrong with it. */
  readonly entry: Entry | null;
  /** In the order of the text. */
  readonly problems: readonly Problem[];
}

/** The file of every entry, in its folder. */
export const entryFile = 'entry.md';

/** Reads and checks the text of an entry by itself. */
export function checked(text: string, address: { readonly challenge: string; readonly id: string }): Checked {
  const { source, problems } = readSource(entryFile, text, splitPlain);
  if (source === null) return { source, plain: null, entry: null, problems: [...problems].sort(byPlace) };
  const understood = understandEntry(source, address);
  const all = cutProblems(source, [...problems, ...understood.problems]);
  const unreadable = problems.some(({ severity }) => severity === 'error');
  return {
    source,
    plain: toPlain(source.root),
    entry: unreadable ? null : understood.entry,
    problems: [...all].sort(byPlace),
  };
}
