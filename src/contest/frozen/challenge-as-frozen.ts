import type { Challenge } from '../../model/challenge.ts';
import type { FrozenResult } from './frozen.ts';
import { targetWhenFrozen } from './target-when-frozen.ts';

/**
 * The challenge with the dates and the target that stood when its result was frozen: what pages of a final challenge
 * show, whatever became of its file since.
 */
export function challengeAsFrozen(challenge: Challenge, frozen: FrozenResult): Challenge {
  const { opens, closes } = frozen.challenge;
  return { ...challenge, opens, closes, target: targetWhenFrozen(challenge, frozen) };
}
