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
  return entries.flatMap(({ challenge: id, entry, name, flights }): Concern[] => {
    const challenge = challenges.get(id);
    if (challenge === undefined) return [];
    const { reportBy, closes } = challenge;
    const handedIn = dayIn(challenge);
    const patience = Math.max(soon, reportBy === null ? 0 : dayNumber(reportBy) - dayNumber(closes));
    const about = { challenge: id, entry, name, handedIn };
    const dated = flights.flatMap(({ number: flight, before, after }) =>
      after === null || before?.date === after.date ? [] : [{ flight, date: after.date }],
    );
    const future = dated.filter(({ date }) => date > daysAfter(handedIn, 1));
    const past = dated.filter(({ date }) => date <= daysAfter(handedIn, 1));
    const late = reportBy !== null && handedIn > reportBy && past.length > 0;
    return [
      ...future.map((one): Concern => ({ kind: 'flown-after-handing-in', ...about, ...one })),
      ...(late
        ? [{ kind: 'handed-in-late', ...about, flights: past.map(({ flight }) => flight), reportBy } as const]
        : past
            .filter(({ date }) => dayNumber(handedIn) - dayNumber(date) > patience)
            .map((one): Concern => ({ kind: 'flown-long-before', ...about, ...one }))),
    ];
  });
}
