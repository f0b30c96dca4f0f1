import { cutProblems } from '../../entries/problems/cut-problems.ts';
import { byPlace, type Problem } from '../../entries/problems/problem.ts';
import { toldOnce } from '../../entries/problems/told-once.ts';
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
  const all = cutProblems(source, [...problems, ...toldOnce(problems, understood.problems)]);
  const unreadable = problems.some(({ severity }) => severity === 'error');
  return {
    source,
    plain: toPlain(source.root),
    entry: unreadable ? null : understood.entry,
    problems: [...all].sort(byPlace),
  };
}

/** Signs with which links, pictures and tables are written in Markdown: without them there is nothing to check in words. */
const marks = /[[\]|]/;

/**
 * What is checked in addition where the words below the fields have links, pictures or tables. What reads Markdown is as
 * heavy as half of everything else here, so it comes only then.
 */
export async function withWordsChecked(now: Checked): Promise<Checked> {
  const { source } = now;
  if (source === null || !marks.test(source.body)) return now;
  const { checkText } = await import('../../entries/check/text-checks.ts');
  return withProblems(now, checkText(source, true));
}

/** The same with more that was found, in the order of the text. */
export function withProblems(now: Checked, more: readonly Problem[]): Checked {
  return more.length === 0 ? now : { ...now, problems: [...now.problems, ...more].sort(byPlace) };
}
