import type { PlaceIfAccepted, Wait } from '../almanac/awaiting/awaiting.ts';
import type { CalendarDate } from '../model/calendar.ts';
import { counted, dateInWords } from './texts.ts';

/** "1st", "2nd", "3rd", "11th". */
export function ordinal(place: number): string {
  const teen = place % 100 >= 11 && place % 100 <= 13;
  const ending = teen ? undefined : ({ 1: 'st', 2: 'nd', 3: 'rd' } as Record<number, string>)[place % 10];
  return `${place}${ending ?? 'th'}`;
}

function change(what: string, ruled: string, now: string): string {
  if (what !== 'seal') return `the ${what.replaceAll('-', ' ')} was ${ruled} then and is ${now} now`;
  return ruled === 'none'
    ? 'that ruling carries no seal'
    : 'what is written about the flight has changed since';
}

/** One wait in words fit for a public page. */
function wait(one: Wait): string {
  switch (one.kind) {
    case 'ruling':
      return 'a ruling';
    case 'new-ruling':
      return one.changes.length === 0
        ? 'a new ruling'
        : `a new ruling: ruled on ${dateInWords(one.ruledOn)}, and ${one.changes.map(({ what, ruled, now }) => change(what, ruled, now)).join('; ')}`;
    case 'evidence':
      return `evidence: ${counted(one.given, 'link')} of ${one.needed}`;
    case 'timekeepers':
      return `timekeepers: ${one.given} of ${one.needed}${one.orVideo ? ', or a time from the video' : ''}`;
    case 'near-limit':
      return `a decision about a limit: ${one.sentence}, which is inside the measuring error`;
    case 'inspection':
      return `an inspection of the ${one.figure}, which would help with that`;
  }
}

/** What an acceptance would do, as a sentence that needs no heading above it. */
function wouldDo({ before, after }: PlaceIfAccepted): string {
  if (after === null) return `If accepted, it would ${before === null ? 'have no place' : 'lose its place'}.`;
  if (before === null) return `If accepted, it would be placed ${ordinal(after)}.`;
  return before === after
    ? `If accepted, it would stay ${ordinal(after)}.`
    : `If accepted, it would move from ${ordinal(before)} to ${ordinal(after)}.`;
}

export const awaiting = {
  menu: 'Awaiting',
  title: (challenge: string) => `What ${challenge} waits for`,
  description: (challenge: string) => `Every flight of ${challenge} that waits for something, and for what.`,
  lead: 'A flight stands here from the day it is handed in until it has been ruled on, and again where something it was ruled on has changed. Waiting says nothing against a flight.',
  none: 'Nothing waits.',
  noneFinal: 'The result is final: nothing waits.',
  summary: (flights: number, entries: number) =>
    `${counted(flights, 'flight')} of ${counted(entries, 'aircraft', 'aircraft')}, the longest wait first.`,
  flights: 'Flights that wait',
  flightColumn: 'Flight',
  flight: (flight: number) => `Flight\u00a0${flight}`,
  flown: 'Flown',
  time: 'Time',
  waitsFor: 'What it waits for',
  place: 'Its place',
  days: (days: number) => (days === 0 ? 'today' : `${counted(days, 'day')} ago`),
  flownOn: (date: CalendarDate, days: number) =>
    `${dateInWords(date)}, ${days === 0 ? 'today' : `${counted(days, 'day')} ago`}`,
  change,
  wait,
  sentence: (one: Wait) => `Waits for ${wait(one)}.`,
  wouldDo,
  claimed:
    'What an acceptance would do is a claim: each flight is taken by itself, as it is written now, with everything else as it stands.',
  leftOut: 'Entries being looked at',
  leftOutLead: 'These entries are being looked at and are not shown for the moment.',
} as const;
