import { protestsUntil } from '../../contest/rules/deadlines.ts';
import { problemAt } from '../problems/make-problem.ts';
import type { ChallengeCheck } from './challenge-check.ts';
import { relatedAt } from './first-of.ts';

/** A result is not to become final while it can still be protested. */
export const checkFinalAfterProtests: ChallengeCheck = (draft, source) => {
  const { opens, closes, final, protests } = draft;
  if (opens === undefined || closes === undefined || final === undefined || protests === undefined) return [];
  const reportBy = draft['report-by'] ?? null;
  const last = protestsUntil({ opens, closes, reportBy, final, protests: protests.value });
  if (last === null || last <= final) return [];
  const from = reportBy === null ? 'closes' : 'report-by';
  return [
    problemAt(source, ['final'], 'value', 'final-before-protests', {
      message: `\`final\` is ${final}, but the result can be protested until ${last}: ${protests.written} from \`${from}\` on. Write a later day, or a shorter time for protests.`,
      found: final,
      accepted: `${last} or later`,
      suggestion: last,
      related: relatedAt(source, ['protests'], '`protests` stands here'),
    }),
  ];
};
