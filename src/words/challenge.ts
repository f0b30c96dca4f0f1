import type { CalendarDate } from '../model/calendar.ts';
import { dateInWords } from './texts.ts';

/** The end of a day, which is another instant in another zone. */
function endOf(date: CalendarDate, zone: string | null): string {
  return `the end of ${dateInWords(date)}, ${zone === null ? 'UTC' : `${zone} time`}`;
}

export const challenge = {
  list: 'Every challenge of this club, the newest first.',
  none: 'No challenge has been announced yet.',
  announced: (opens: CalendarDate) => `Announced: opens on ${dateInWords(opens)}.`,
  open: (closes: CalendarDate, zone: string | null) => `Open until ${endOf(closes, zone)}.`,
  closed: (closes: CalendarDate, zone: string | null) => `Closed since ${endOf(closes, zone)}.`,
  provisional: 'The board is provisional until the result is final.',
  final: (closed: CalendarDate) => `Final: this result was frozen on ${dateInWords(closed)}.`,
  frozenBy: (version: string) =>
    `It was worked out by version ${version} of Last Turn and no longer changes.`,
  span: (opens: CalendarDate, closes: CalendarDate) =>
    `Flights of ${dateInWords(opens)} to ${dateInWords(closes)} count.`,
  reportBy: (date: CalendarDate) => `Last day for handing in flights: ${dateInWords(date)}.`,
  protests: (date: CalendarDate) => `Last day for protests: ${dateInWords(date)}.`,
  finalOn: (date: CalendarDate) => `The result becomes final on or after ${dateInWords(date)}.`,
  finalOpen: 'The organiser has set no date for the final result.',
  recordsLink: 'Records and history',
  howToEnter: 'How to enter',
  readRules: 'Read the rules',
  readRulesWhy: 'they say which aircraft may enter and what a flight must show.',
  bySource: 'Write the file by hand and propose it in the source of this site',
  byMail: 'Send the file by mail once the form has made it',
  waiting: 'Flights count from the opening day on; until then there is nothing to rank.',
  target: (time: string, label: string | null) =>
    label === null ? `Target: ${time}` : `Target: ${time} (${label})`,
  title: 'Challenge',
  aircraft: 'Aircraft',
  targetHeading: 'Target',
  best: 'Best time',
  first: 'First place',
  nothing: '–',
  dates: (opens: CalendarDate, closes: CalendarDate) => `${dateInWords(opens)} to ${dateInWords(closes)}`,
  states: {
    announced: 'announced',
    open: 'open',
    closed: 'closed, not yet final',
    final: 'final',
  },
  rulesLink: 'The rules',
  jsonLink: 'Data as JSON',
  csvLink: 'Data as CSV',
} as const;
