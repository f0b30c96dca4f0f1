import type { CalendarDate } from '../model/calendar.ts';

/**
 * The calendar date of an instant in a time zone (UTC where none is given). A challenge opens and closes by the
 * calendar of its own zone, wherever the site is built.
 *
 * @param now ISO 8601 with an offset or `Z`
 */
export function todayIn(now: string, timeZone: string | null): CalendarDate {
  const parts = new Intl.DateTimeFormat('en-GB', {
    timeZone: timeZone ?? 'UTC',
    calendar: 'gregory',
    numberingSystem: 'latn',
    year: 'numeric',
    month: '2-digit',
    day: '2-digit',
  }).formatToParts(new Date(now));
  const part = (type: string) => parts.find((item) => item.type === type)?.value ?? '';
  return `${part('year').padStart(4, '0')}-${part('month')}-${part('day')}`;
}
