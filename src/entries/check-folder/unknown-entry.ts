import { didYouMean } from '../problems/did-you-mean.ts';
import { problemOf } from '../problems/make-problem.ts';
import type { Problem } from '../problems/problem.ts';
import type { FolderCheck } from './folder-check.ts';

export const unknownEntry: FolderCheck = {
  code: 'unknown-entry',
  scope: 'ruling',
  check: ({ there }) =>
    [...there.files]
      .flatMap((file) => {
        const entry = /^rulings\/([^/]+\/[^/]+)\.md$/.exec(file)?.[1];
        return entry === undefined || there.entries.has(entry) ? [] : [{ file, entry }];
      })
      .map(({ file, entry }, index) => missing(file, entry, index < mostSuggestions ? there.entries : [])),
};

/** After so many the cause is a folder that was renamed and no slip of the pen; the search takes its time. */
const mostSuggestions = 20;

function missing(file: string, entry: string, candidates: Iterable<string>): Problem {
  const near = didYouMean(entry, candidates);
  const hint = near === null ? '' : ` Did you mean "${near}"?`;
  return problemOf(file, 'unknown-entry', {
    message: `There is no entry "${entry}" for this ruling: entries/${entry}/entry.md is missing.${hint}`,
    found: entry,
    accepted: 'the challenge and the folder name of an entry',
    suggestion: near,
  });
}
