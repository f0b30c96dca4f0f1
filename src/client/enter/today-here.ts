import type { CalendarDate } from '../../model/calendar.ts';

/** The calendar date of a moment where the visitor is. */
export function todayHere(now: Date): CalendarDate {
  const [month, day] = [now.getMonth() + 1, now.getDate()].map((part) => String(part).padStart(2, '0'));
  return `${now.getFullYear()}-${month}-${day}`;
}
