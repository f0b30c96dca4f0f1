import type { MarkKind } from '../charts/flight-marks.ts';
import type { CalendarDate } from '../model/calendar.ts';
import { counted, dateInWords, shortDate } from './texts.ts';

export const charts = {
  inNumbers: 'In numbers',
  flights: {
    heading: 'Flight by flight',
    title: (name: string) => `Official times of ${name}, flight by flight`,
    description: (flights: number, shortest: string, longest: string, best: string | null) =>
      `${counted(flights, 'flight')} in the order in which they were flown, from ${shortest} to ${longest}. ${
        best === null ? 'None of them counts.' : best
      } The ledger of times lists every one.`,
    bestFlight: (number: number, time: string, date: CalendarDate, counts: boolean) =>
      `The best${counts ? '' : ' that may count'} is flight ${number} with ${time}, on ${dateInWords(date)}.`,
    explained: (bars: boolean, setups: boolean) =>
      [
        'Each flight stands above its number in the ledger of times, in the order flown; flights of one day are held together.',
        ...(setups ? ['An upright line marks a new setup of the aircraft.'] : []),
        bars
          ? 'An upright stroke through a mark is the ± of its time.'
          : 'The ± of a time is smaller than its mark.',
      ].join(' '),
    seconds: 'Official time (s)',
    days: (first: CalendarDate, last: CalendarDate) =>
      first === last ? dateInWords(first) : `${dateInWords(first)} to ${dateInWords(last)}`,
    day: shortDate,
    level: (time: string, label: string | null) => (label === null ? `Target ${time}` : `${time} · ${label}`),
    setup: (id: string | null) => id ?? 'as first entered',
    best: 'the best',
    target: 'the target',
    milestone: 'a milestone',
  },
  marks: {
    accepted: 'accepted',
    provisional: 'provisional',
    apart: 'does not count',
    attempt: 'attempt',
    struck: 'withdrawn, refused or void',
  } satisfies Record<MarkKind, string>,
} as const;
