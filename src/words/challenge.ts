import type { CalendarDate } from '../model/calendar.ts';
import { counted, dateInWords } from './texts.ts';

export const challenge = {
  list: 'Every challenge of this club, the newest first.',
  none: 'No challenge has been announced yet.',
  entries: (count: number) => counted(count, 'aircraft', 'aircraft'),
  announced: (opens: CalendarDate) => `Announced: opens on ${dateInWords(opens)}.`,
  open: (closes: CalendarDate) => `Open until ${dateInWords(closes)}.`,
  closed: (closes: CalendarDate) =>
    `Closed since the end of ${dateInWords(closes)}. The board is provisional until the result is final.`,
  final: (closed: CalendarDate) =>
    `Final: this result was frozen on ${dateInWords(closed)} and no longer changes.`,
  finalPlain: 'Final: this result is frozen and no longer changes.',
  span: (opens: CalendarDate, closes: CalendarDate) =>
    `Flights of ${dateInWords(opens)} to ${dateInWords(closes)} count.`,
  reportBy: (date: CalendarDate) => `Flights must be handed in by ${dateInWords(date)}.`,
  finalOn: (date: CalendarDate) => `The result becomes final on or after ${dateInWords(date)}.`,
  target: (time: string, label: string | null) =>
    label === null ? `Target: ${time}` : `Target: ${time} (${label})`,
  leading: (name: string, score: string) => `${name} leads with ${score}.`,
  winner: (name: string, score: string) => `${name} won with ${score}.`,
  rulesLink: 'The rules',
  jsonLink: 'Data as JSON',
  csvLink: 'Data as CSV',
  boardLink: 'The board',
} as const;
