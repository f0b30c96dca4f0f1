import type { ChallengeCheck } from './challenge-check.ts';
import { checkDatesInOrder } from './dates-in-order.ts';
import { checkFinalAfterProtests } from './final-after-protests.ts';
import { checkRounds } from './rounds.ts';
import { checkRuleNames } from './rule-names.ts';

/** Every check of a challenge by itself. A new check is one module and one line here. */
export const challengeChecks: readonly ChallengeCheck[] = [
  checkDatesInOrder,
  checkFinalAfterProtests,
  checkRounds,
  checkRuleNames,
];
