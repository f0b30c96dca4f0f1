import type { Contender } from '../../contest/contender.ts';
import { differsFromFrozen } from '../../contest/frozen/differs-from-frozen.ts';
import type { FrozenResult } from '../../contest/frozen/frozen.ts';
import { judge } from '../../contest/judge.ts';
import type { Challenge } from '../../model/challenge.ts';
import { problemOf } from '../problems/make-problem.ts';
import type { Problem } from '../problems/problem.ts';

/** So many differences are told one by one. */
const told = 6;

/**
 * Says once of a final challenge that its result, worked out anew from what is written now, would not be the frozen
 * one. The frozen one stands: this is only so that nobody wonders.
 */
export function checkFinalResult(
  challenge: Challenge,
  contenders: readonly Contender[],
  frozen: FrozenResult,
): readonly Problem[] {
  const computed = judge(challenge, contenders, { now: challenge.closes, frozen: null });
  const differing = differsFromFrozen(computed, frozen);
  if (differing.length === 0) return [];
  const more = differing.length - told;
  const list = [...differing.slice(0, told), ...(more > 0 ? [`${more} more`] : [])].join('; ');
  return [
    problemOf(`results/${challenge.id}.json`, 'final-result-differs', {
      message:
        `The result of ${challenge.id} was frozen on ${frozen.closed} and stands. ` +
        `Worked out from what is written today it would differ: ${list}.`,
    }),
  ];
}
