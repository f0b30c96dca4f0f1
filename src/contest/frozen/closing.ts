import type { CalendarDate } from '../../model/calendar.ts';
import type { Challenge } from '../../model/challenge.ts';
import { daysAfter } from '../../timing/days-after.ts';
import { protestsUntil } from '../rules/deadlines.ts';
import type { ContestResult, JudgedFlight } from '../standing.ts';

/**
 * The first day on which a result may be frozen: the day the rules call final; where they set none, the day after the
 * last on which it can be protested, or after flights are handed in, or after the challenge closes.
 */
export function mayCloseFrom(challenge: Challenge): CalendarDate {
  if (challenge.final !== null) return challenge.final;
  return daysAfter(protestsUntil(challenge) ?? challenge.reportBy ?? challenge.closes, 1);
}

/** A flight that still waits for a ruling. */
export interface WaitingFlight {
  readonly entry: string;
  readonly flight: JudgedFlight;
}

/** The flights that a frozen result would keep as provisional for ever, by entry and number. */
export function waitingFlights(result: Pick<ContestResult, 'entries'>): readonly WaitingFlight[] {
  return [...result.entries.values()].flatMap(({ entry, flights }) =>
    flights.filter(({ status }) => status === 'provisional').map((flight) => ({ entry, flight })),
  );
}
