import type { There } from '../folder/gathered.ts';
import { didYouMean } from '../problems/did-you-mean.ts';
import { problemOf } from '../problems/make-problem.ts';
import type { Problem } from '../problems/problem.ts';
import type { FolderCheck } from './folder-check.ts';

export const unknownChallenge: FolderCheck = {
  code: 'unknown-challenge',
  scope: 'challenge',
  check: ({ there }) =>
    [...there.files].flatMap((file): Problem[] => {
      const challenge =
        /^entries\/([^/]+)\/[^/]+\/entry\.md$/.exec(file)?.[1] ?? /^results\/([^/]+)\.json$/.exec(file)?.[1];
      return challenge === undefined || there.challenges.has(challenge)
        ? []
        : [missing(file, challenge, there)];
    }),
};

function missing(file: string, challenge: string, there: There): Problem {
  const near = didYouMean(challenge, there.challenges);
  const hint = near === null ? '' : ` Did you mean "${near}"?`;
  return problemOf(file, 'unknown-challenge', {
    message: `There is no challenge "${challenge}": the file challenges/${challenge}.md is missing.${hint}`,
    found: challenge,
    accepted: [...there.challenges].join(', '),
    suggestion: near,
  });
}
