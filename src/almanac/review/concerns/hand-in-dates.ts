import type { CalendarDate } from '../../../model/calendar.ts';
import type { Challenge } from '../../../model/challenge.ts';
import { daysAfter } from '../../../timing/days-after.ts';
import { dayNumber } from '../../../timing/instant.ts';
import type { Concern } from '../concern.ts';
import type { ReviewedEntry } from '../review.ts';

/** Days between flying and handing in that nobody asks about, where the rules do not leave more after the last day. */
const soon = 14;

/**
 * New flights, and flights with another date, whose day does not go with the day of handing in: later than it by more
 * than the date line explains, after the last day to hand in, or longer ago than the rules leave time after the last day
 * of flying.
 */
export function handInDates(
  entries: readonly ReviewedEntry[],
  challenges: ReadonlyMap<string, Challenge>,
  dayIn: (challenge: Challenge) => CalendarDate,
): readonly Concern[] {
  return entries.flatMap(({ challenge: id, entry, name, flights }) => {
    const challenge = challenges.get(id);
    if (challenge === undefined) return [];
    const { reportBy, closes } = challenge;
    const handedIn = dayIn(challenge);
    const patience = Math.max(soon, reportBy === null ? 0 : dayNumber(reportBy) - dayNumber(closes));
    return flights.flatMap(({ number, before, after }): Concern[] => {
      if (after === null || before?.date === after.date) return [];
      const about = { challenge: id, entry, name, flight: number, date: after.date, handedIn, reportBy };
      if (after.date > daysAfter(handedIn, 1)) return [{ kind: 'flown-after-handing-in', ...about }];
      if (reportBy !== null && handedIn > reportBy) return [{ kind: 'handed-in-late', ...about }];
      const days = dayNumber(handedIn) - dayNumber(after.date);
      return days > patience ? [{ kind: 'flown-long-before', ...about }] : [];
    });
  });
}
