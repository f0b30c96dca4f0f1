import type { Contender } from '../../contest/contender.ts';
import type { ContestResult, JudgedFlight } from '../../contest/standing.ts';
import type { CalendarDate } from '../../model/calendar.ts';
import type { Challenge } from '../../model/challenge.ts';
import { dayNumber } from '../../timing/instant.ts';
import type { AwaitingEntry, AwaitingFlight } from './awaiting.ts';
import { placeIfAccepted } from './if-accepted.ts';
import { waitsOfFlight } from './waits-of-flight.ts';

/**
 * Every flight that an acceptance would make count, and what it waits for, grouped by entry; the entry whose flight has
 * waited longest comes first. Nothing of a final challenge waits, and nothing of an entry withdrawn or disqualified.
 */
export function awaitingOf(
  challenge: Challenge,
  contenders: readonly Contender[],
  result: ContestResult,
  today: CalendarDate,
): readonly AwaitingEntry[] {
  if (result.state === 'final') return [];
  const byEntry = new Map(contenders.map((contender) => [contender.entry.id, contender]));
  return contenders
    .filter(({ entry, ruling }) => entry.withdrawn === null && (ruling?.disqualified ?? null) === null)
    .map((contender) => ({
      entry: contender.entry.id,
      name: contender.entry.name,
      flights: (result.entries.get(contender.entry.id)?.flights ?? [])
        .filter(({ status }) => status === 'provisional' || status === 'ineligible')
        .flatMap((judged) => awaitingFlight(challenge, byEntry, contender, judged, result, today))
        .sort((a, b) => compare(a.date, b.date) || a.number - b.number),
    }))
    .filter(({ flights }) => flights.length > 0)
    .sort((a, b) => compare(oldest(a), oldest(b)) || compare(a.entry, b.entry));
}

function awaitingFlight(
  challenge: Challenge,
  byEntry: ReadonlyMap<string, Contender>,
  contender: Contender,
  judged: JudgedFlight,
  result: ContestResult,
  today: CalendarDate,
): AwaitingFlight[] {
  const flight = contender.entry.flights.find(({ number }) => number === judged.number);
  const place = placeIfAccepted(challenge, byEntry, result, contender.entry.id, judged.number, today);
  if (flight === undefined || place === null) return [];
  return [
    {
      number: judged.number,
      date: judged.date,
      days: Math.max(0, dayNumber(today) - dayNumber(judged.date)),
      seconds: judged.official.seconds,
      waits: waitsOfFlight(challenge, contender, flight, judged),
      place,
    },
  ];
}

function oldest({ flights }: AwaitingEntry): string {
  return flights[0]?.date ?? '';
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
