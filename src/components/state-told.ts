import type { ChallengeRecord } from '../almanac/almanac.ts';
import { protestsUntil } from '../contest/rules/deadlines.ts';
import type { CalendarDate } from '../model/calendar.ts';
import { words } from '../words.ts';

const say = words.challenge;

/** Where a challenge stands, and what somebody who reads that has to know then. */
export interface StateTold {
  readonly headline: string;
  readonly sentences: readonly string[];
}

/**
 * Tells the state of a challenge. Dates that may have passed by now are told in words that are true before and after, since
 * only the state depends on the day.
 */
export function toldOfState({
  challenge,
  state,
  frozen,
}: Pick<ChallengeRecord, 'challenge' | 'state' | 'frozen'>): StateTold {
  const { opens, closes, timeZone, reportBy, final } = challenge;
  const counts = say.span(opens, closes);
  switch (state) {
    case 'announced':
      return { headline: say.announced(opens), sentences: [counts, ...dated(say.reportBy, reportBy)] };
    case 'open':
      return {
        headline: say.open(closes, timeZone),
        sentences: [counts, ...dated(say.reportBy, reportBy), ...dated(say.finalOn, final)],
      };
    case 'closed':
      return {
        headline: say.closed(closes, timeZone),
        sentences: [
          say.provisional,
          ...dated(say.reportBy, reportBy),
          ...dated(say.protests, protestsUntil(challenge)),
          ...(final === null ? [say.finalOpen] : [say.finalOn(final)]),
        ],
      };
    case 'final':
      return {
        headline: frozen === null ? words.challenge.states.final : say.final(frozen.closed.slice(0, 10)),
        sentences: [...(frozen === null ? [] : [say.frozenBy(frozen.generator)]), counts],
      };
  }
}

function dated(sentence: (date: CalendarDate) => string, date: CalendarDate | null): string[] {
  return date === null ? [] : [sentence(date)];
}
