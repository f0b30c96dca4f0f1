import type { CalendarDate } from '../../model/calendar.ts';
import type { Entry } from '../../model/entry.ts';
import { problemAt } from '../problems/make-problem.ts';
import type { Problem } from '../problems/problem.ts';
import type { SourceDocument } from '../source/source.ts';
import { type CrossCheck, pathOfFlight } from './cross-check.ts';

/** A flight dated after the day of the build; one day of grace, for places on the other side of the date line. */
export const checkFlightInFuture: CrossCheck = ({ record, source, today }) =>
  flightsInFuture(record.entry, source, today);

/** The same of an entry that has no verdicts yet. */
export function flightsInFuture(
  { flights }: Pick<Entry, 'flights'>,
  source: SourceDocument,
  today: CalendarDate,
): readonly Problem[] {
  return flights
    .filter(({ date }) => date.date > dayAfter(today))
    .map(({ number, date }) => {
      const path = pathOfFlight(source, number);
      return problemAt(source, [...path.slice(0, -1), 'date'], 'value', 'flight-in-future', {
        message: `Flight ${number} is dated ${date.date}, and today is ${today}. Write the day on which it was flown.`,
        found: date.written,
        accepted: 'a day that has come, such as 2027-05-09',
      });
    });
}

function dayAfter(day: CalendarDate): CalendarDate {
  return new Date(Date.parse(`${day}T00:00:00Z`) + 86_400_000).toISOString().slice(0, 10);
}
