import type { CalendarDate, Moment } from '../../model/calendar.ts';
import { parseDate, parseMoment } from '../../timing/calendar.ts';
import { leaf, type Reading, refused, taken } from './leaf.ts';

/** A calendar date, `2027-05-09`. */
export function date() {
  return leaf<CalendarDate>({ kind: 'date', precision: 'day' }, (text) => asDate(parseDate(text)));
}

/** A calendar date at the flying place, with or without the time of day and its offset. */
export function moment() {
  return leaf<Moment>({ kind: 'date', precision: 'moment' }, (text) => asDate(parseMoment(text)));
}

/** A month or a date: rubber is often dated by the month on its box. */
export function monthOrDate() {
  return leaf({ kind: 'date', precision: 'month' }, (text): Reading<string> => {
    if (/^\d{4}-(0[1-9]|1[0-2])$/.test(text)) return taken(text);
    const parsed = parseDate(text);
    if (parsed.ok) return parsed;
    return refused(
      'not-a-date',
      `"${text}" is not a month or a date.`,
      text,
      'a month or a date, such as 2026-02 or 2026-02-14',
    );
  });
}

// Dates are no quantities: whatever is wrong with one has the one code of dates.
function asDate<T>(reading: Reading<T>): Reading<T> {
  return reading.ok ? reading : { ok: false, fault: { ...reading.fault, code: 'not-a-date' } };
}
