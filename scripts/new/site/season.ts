import type { CalendarDate } from '../../../src/model/calendar.ts';
import { parseDate } from '../../../src/timing/calendar.ts';
import { daysAfter } from '../../../src/timing/days-after.ts';
import { UsageError } from '../../terminal/command-line.ts';

/** The days of a challenge. */
export interface Season {
  readonly opens: CalendarDate;
  readonly closes: CalendarDate;
  readonly reportBy: CalendarDate;
  readonly final: CalendarDate;
}

/** As many days as there are from the first of April to the end of September. */
const length = 183;
/** How long before the opening rules should be known. */
const notice = 60;
const forHandingIn = 14;
/** The protests of the seeded rules, 14 days from the last for handing in, and a day to freeze the result on. */
const forProtests = 15;

/**
 * The season that is given, else the next that begins on a first of April and leaves time to make its rules known.
 * Throws a UsageError for what is no day, and for an end before the beginning.
 */
export function seasonFor(
  today: CalendarDate,
  given: { readonly opens?: string | undefined; readonly closes?: string | undefined },
): Season {
  const opens = given.opens === undefined ? nextApril(today) : dayOf('opens', given.opens);
  const closes = given.closes === undefined ? daysAfter(opens, length - 1) : dayOf('closes', given.closes);
  if (closes < opens)
    throw new UsageError(
      `The challenge would close on ${closes}, before it opens on ${opens}. Give a later --closes.`,
    );
  const reportBy = daysAfter(closes, forHandingIn);
  return { opens, closes, reportBy, final: daysAfter(reportBy, forProtests) };
}

function nextApril(today: CalendarDate): CalendarDate {
  const year = Number(today.slice(0, 4));
  const april = `${today.slice(0, 4)}-04-01`;
  return april >= daysAfter(today, notice) ? april : `${String(year + 1).padStart(4, '0')}-04-01`;
}

function dayOf(option: string, text: string): CalendarDate {
  const date = parseDate(text);
  if (!date.ok) throw new UsageError(`The option --${option}: ${date.fault.message}`);
  return date.value;
}
