import type { CalendarDate } from '../../model/calendar.ts';
import type { Challenge, ChallengeState } from '../../model/challenge.ts';

/**
 * Where a challenge stands in its life on a given day: announced before it opens, open from that day to the closing
 * day itself, then closed. It is final if and only if its result is frozen, whatever the day.
 */
export function challengeState(
  challenge: Pick<Challenge, 'opens' | 'closes'>,
  today: CalendarDate,
  isFrozen: boolean,
): ChallengeState {
  if (isFrozen) return 'final';
  if (today < challenge.opens) return 'announced';
  return today <= challenge.closes ? 'open' : 'closed';
}
