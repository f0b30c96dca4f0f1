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
  const wrong =
    named === undefined
      ? `the file's name "${id}.md" does not begin with it`
      : `the file's name says ${named}`;
  return [
    problemAt(source, ['date'], 'value', 'name-differs', {
      message: `\`date\` is ${draft.date}, but ${wrong}. Correct the date, or name the file like "${draft.date}-a-few-words.md".`,
      found: draft.date,
      accepted: named ?? `a file name that begins with ${draft.date}-`,
      suggestion: named ?? null,
    }),
  ];
}
