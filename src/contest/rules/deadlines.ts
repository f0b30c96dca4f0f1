import type { CalendarDate } from '../../model/calendar.ts';
import type { Challenge } from '../../model/challenge.ts';
import { daysAfter } from '../../timing/days-after.ts';

/** What happens on a date of a challenge. All but the first and the last end with that day. */
export type DeadlineKind = 'opens' | 'closes' | 'report-by' | 'protests' | 'final';

export interface Deadline {
  readonly kind: DeadlineKind;
  readonly date: CalendarDate;
}

export type Dated = Pick<Challenge, 'opens' | 'closes' | 'reportBy' | 'protests' | 'final'>;

const secondsOfDay = 86_400;

/**
 * The last day on which the result of a challenge can be protested: the time for protests runs from the day by which
 * flights are handed in, where there is none from the closing day, since from then on no new flight changes the board. A
 * part of a day lasts to the end of that day. Null where the rules set no time for protests.
 */
export function protestsUntil({ closes, reportBy, protests }: Dated): CalendarDate | null {
  return protests === null ? null : daysAfter(reportBy ?? closes, Math.ceil(protests / secondsOfDay));
}

/** The dates of a challenge in their order, as its rules set them. On one day, in the order of its life. */
export function deadlines(challenge: Dated): readonly Deadline[] {
  const dates: readonly (readonly [DeadlineKind, CalendarDate | null])[] = [
    ['opens', challenge.opens],
    ['closes', challenge.closes],
    ['report-by', challenge.reportBy],
    ['protests', protestsUntil(challenge)],
    ['final', challenge.final],
  ];
  return dates
    .flatMap(([kind, date]) => (date === null ? [] : [{ kind, date }]))
    .sort((a, b) => (a.date === b.date ? 0 : a.date < b.date ? -1 : 1));
}
