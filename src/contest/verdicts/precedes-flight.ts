import type { CalendarDate } from '../../model/calendar.ts';
import { daysAfter } from '../../timing/days-after.ts';

/**
 * True where a day on which something was decided about a flight lies before the flight. Both are calendar days of their
 * own places, which differ by one day at most across the date line: one day before is left alone.
 */
export function precedesFlight(day: CalendarDate, flown: CalendarDate): boolean {
  return daysAfter(day, 1) < flown;
}
