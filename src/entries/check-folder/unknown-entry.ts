import { didYouMean } from '../did-you-mean.ts';
import type { There } from '../gathered.ts';
import { problemOf } from '../make-problem.ts';
import type { Problem } from '../problem.ts';
import type { FolderCheck } from './folder-check.ts';

export const unknownEntry: FolderCheck = {
  code: 'unknown-entry',
  scope: 'ruling',
  check: ({ there }) =>
    [...there.files].flatMap((file): Problem[] => {
      const entry = /^rulings\/([^/]+\/[^/]+)\.md$/.exec(file)?.[1];
      return entry === undefined || there.entries.has(entry) ? [] : [missing(file, entry, there)];
    }),
};

function missing(file: string, entry: string, there: There): Problem {
  const near = didYouMean(entry, there.entries);
  const hint = near === null ? '' : ` Did you mean "${near}"?`;
  return problemOf(file, 'unknown-entry', {
    message: `There is no entry "${entry}" for this ruling: entries/${entry}/entry.md is missing.${hint}`,
    found: entry,
    accepted: 'the challenge and the folder name of an entry',
    suggestion: near,
  });
}
