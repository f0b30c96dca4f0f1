import { problemAt } from '../problems/make-problem.ts';
import type { Problem } from '../problems/problem.ts';
import type { SourceDocument } from '../source/source.ts';

/** The date of an announcement is the one its file's name begins with. */
export function checkNameOfNews(
  draft: { readonly date?: string },
  source: SourceDocument,
  id: string,
): Problem[] {
  if (draft.date === undefined || id.startsWith(`${draft.date}-`)) return [];
  const named = /^\d{4}-\d{2}-\d{2}(?=-)/.exec(id)?.[0];
  // A name without any date is told to be a bad name where the folder is listed.
  if (named === undefined) return [];
  return [
    problemAt(source, ['date'], 'value', 'name-differs', {
      message: `\`date\` is ${draft.date}, but the file's name says ${named}. Correct the date, or name the file like "${draft.date}-a-few-words.md".`,
      found: draft.date,
      accepted: named,
      suggestion: named,
    }),
  ];
}
