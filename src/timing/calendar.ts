import type { CalendarDate, Moment } from '../model/calendar.ts';
import type { Fault, Parsed } from '../quantities/quantity.ts';

const dateForms = 'a calendar date as year-month-day, such as 2027-05-09';
const momentForms =
  'a calendar date, such as 2027-05-09, or with the local time and its offset from UTC, such as 2027-05-09 18:40+01:00';

/** The offsets in use on Earth run from 12 hours west to 14 hours east of Greenwich (ISO 8601 has no limit of its own). */
const westmost = -12 * 60;
const eastmost = 14 * 60;

/**
 * Reads a calendar date written `YYYY-MM-DD` (ISO 8601, extended format). A day that does not exist is refused; other
 * ways of writing are refused with the accepted one offered where they can mean one day only.
 */
export function parseDate(text: string): Parsed<CalendarDate> {
  const found = text.trim();
  const match = /^(\d{4})-(\d{2})-(\d{2})$/.exec(found);
  if (match === null) return refuse('not-a-quantity', found, notADate(found), dateForms, rewritten(found));
  const [, year, month, day] = match;
  if (!exists(Number(year), Number(month), Number(day)))
    return refuse(
      'impossible-value',
      found,
      `"${found}" is not a day of the calendar. Write the day it was.`,
      dateForms,
    );
  return { ok: true, value: found };
}

/**
 * Reads when something happened at the flying place: a calendar date, alone or with a local time, and that with an
 * offset from UTC (`+01:00`, `-0330`, `Z`). The date stays the one written, whatever the offset.
 */
export function parseMoment(text: string): Parsed<Moment> {
  const written = text.trim();
  const match = /^(\S{10})(?:(?:\s+|[Tt])(\S+?)\s*([Zz]|[+\-−]\d{2}:?\d{2})?)?$/.exec(written);
  if (match === null) {
    const date = parseDate(written);
    return date.ok
      ? { ok: true, value: { date: date.value, time: null, offset: null, written } }
      : forMoment(date.fault);
  }
  const date = parseDate(match[1] ?? '');
  if (!date.ok) return forMoment({ ...date.fault, found: written });
  const clock = match[2];
  if (clock === undefined)
    return { ok: true, value: { date: date.value, time: null, offset: null, written } };
  if (!/^([01]\d|2[0-3]):[0-5]\d(:[0-5]\d)?$/.test(clock))
    return refuse(
      'not-a-quantity',
      written,
      `"${clock}" is not a time of day. Write hours and minutes with two digits each, from 00:00 to 23:59.`,
      momentForms,
    );
  const offset = match[3] === undefined ? null : offsetInMinutes(match[3]);
  if (offset !== null && (Number.isNaN(offset) || offset < westmost || offset > eastmost))
    return refuse(
      'impossible-value',
      written,
      `"${match[3]}" is no offset from UTC that any place has. Write one from -12:00 to +14:00.`,
      momentForms,
    );
  return { ok: true, value: { date: date.value, time: clock, offset, written } };
}

/** True for a day of the Gregorian calendar. */
function exists(year: number, month: number, day: number): boolean {
  return month >= 1 && month <= 12 && day >= 1 && day <= daysOfMonth(year, month);
}

function daysOfMonth(year: number, month: number): number {
  if (month === 2) return year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0) ? 29 : 28;
  return [4, 6, 9, 11].includes(month) ? 30 : 31;
}

function offsetInMinutes(text: string): number {
  if (text === 'Z' || text === 'z') return 0;
  const digits = text.replace(/\D/g, '');
  const minutes = Number(digits.slice(2));
  if (minutes > 59) return Number.NaN;
  const size = Number(digits.slice(0, 2)) * 60 + minutes;
  return text.startsWith('+') ? size : 0 - size;
}

function notADate(found: string): string {
  return found === ''
    ? 'There is no date here. Write year, month and day with hyphens between them.'
    : `"${found}" is not a date as this format writes it. Write year, month and day with hyphens between them.`;
}

/** The accepted form of a date written otherwise, where only one day can be meant. */
function rewritten(found: string): string | undefined {
  const yearFirst = /^(\d{4})[-/. ](\d{1,2})[-/. ](\d{1,2})$/.exec(found);
  const yearLast = /^(\d{1,2})[-/. ](\d{1,2})[-/. ](\d{4})$/.exec(found);
  const named = withMonthNamed(found);
  if (named !== null) return existing(...named);
  const [year, month, day] =
    yearFirst !== null
      ? [yearFirst[1], yearFirst[2], yearFirst[3]]
      : yearLast === null
        ? []
        : Number(yearLast[1]) > 12
          ? [yearLast[3], yearLast[2], yearLast[1]]
          : Number(yearLast[2]) > 12
            ? [yearLast[3], yearLast[1], yearLast[2]]
            : [];
  if (year === undefined || month === undefined || day === undefined) return undefined;
  return existing(year, month, day);
}

function existing(year: string, month: string, day: string): string | undefined {
  if (!exists(Number(year), Number(month), Number(day))) return undefined;
  return `${year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}`;
}

const months = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];
const wholeMonth =
  /^(?:january|february|march|april|may|june|july|august|sept?|september|october|november|december|[a-z]{3})$/;

/** Year, month and day of `18 July 2026` or `July 18, 2026`; null where it is not written so. */
function withMonthNamed(found: string): readonly [string, string, string] | null {
  const dayFirst = /^(\d{1,2})(?:st|nd|rd|th)?\.?[ -]([a-z]+)\.?,?[ -](\d{4})$/i.exec(found);
  const monthFirst = /^([a-z]+)\.? (\d{1,2})(?:st|nd|rd|th)?,? (\d{4})$/i.exec(found);
  const [, day, name, year] = dayFirst ?? [null, monthFirst?.[2], monthFirst?.[1], monthFirst?.[3]];
  if (day === undefined || name === undefined || year === undefined) return null;
  const month = months.indexOf(name.slice(0, 3).toLowerCase()) + 1;
  return month === 0 || !wholeMonth.test(name.toLowerCase()) ? null : [year, String(month), day];
}

function forMoment(fault: Fault): { readonly ok: false; readonly fault: Fault } {
  return { ok: false, fault: { ...fault, accepted: momentForms } };
}

function refuse(
  code: Fault['code'],
  found: string,
  message: string,
  accepted: string,
  suggestion?: string,
): { readonly ok: false; readonly fault: Fault } {
  return {
    ok: false,
    fault: { code, message, found, accepted, ...(suggestion === undefined ? {} : { suggestion }) },
  };
}
