import type { CalendarDate, Moment } from '../model/calendar.ts';

/**
 * The instant of a moment in seconds since 1970-01-01T00:00Z, leap seconds not counted; null unless both its time and
 * its offset are stated.
 */
export function instantOf(moment: Moment): number | null {
  if (moment.time === null || moment.offset === null) return null;
  const [hours = 0, minutes = 0, seconds = 0] = moment.time.split(':').map(Number);
  return dayNumber(moment.date) * 86_400 + (hours * 60 + minutes - moment.offset) * 60 + seconds;
}

/** Days from 1970-01-01 to a date of the Gregorian calendar; negative before it. */
export function dayNumber(date: CalendarDate): number {
  const [year = 0, month = 1, day = 1] = date.split('-').map(Number);
  // Years are taken to begin in March, so that the leap day comes last.
  const shiftedYear = month > 2 ? year : year - 1;
  const shiftedMonth = month > 2 ? month - 3 : month + 9;
  const days =
    365 * shiftedYear +
    Math.floor(shiftedYear / 4) -
    Math.floor(shiftedYear / 100) +
    Math.floor(shiftedYear / 400) +
    Math.floor((153 * shiftedMonth + 2) / 5) +
    day -
    1;
  return days - 719_468;
}
