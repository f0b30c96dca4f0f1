import type * as z from 'zod';
import type { Problem } from '../problems/problem.ts';
import type { challenge } from '../schema/challenge.ts';
import type { SourceDocument } from '../source/source.ts';
import type { Draft } from '../understand/draft.ts';
import { checkDatesInOrder } from './dates-in-order.ts';
import { checkFinalAfterProtests } from './final-after-protests.ts';
import { checkRounds } from './rounds.ts';
import { checkRuleNames } from './rule-names.ts';

export type ChallengeFields = z.output<typeof challenge>;
export type ChallengeDraft = Draft<ChallengeFields>;

/** A check of one challenge by itself. It sees what could be read, whatever else is wrong with the file. */
export type ChallengeCheck = (draft: ChallengeDraft, source: SourceDocument) => readonly Problem[];

/** Every check of a challenge by itself. A new check is one module and one line here. */
export const challengeChecks: readonly ChallengeCheck[] = [
  checkDatesInOrder,
  checkFinalAfterProtests,
  checkRounds,
  checkRuleNames,
];
