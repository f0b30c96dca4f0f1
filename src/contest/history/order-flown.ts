import { partByMoment } from '../ranking/earlier.ts';
import type { AcceptedFlight } from './accepted-flight.ts';

/**
 * Flights in the order flown: by the calendar at the flying place; on one day by the instant where flights state time
 * and offset; and where that cannot be told, by the number of the flight, since a day's rounds are flown one after the
 * other, then by the entry's id.
 */
export function inOrderFlown<T extends AcceptedFlight>(flights: readonly T[]): readonly T[] {
  const days = new Map<string, T[]>();
  for (const flight of flights) {
    const day = days.get(flight.flown.date);
    if (day === undefined) days.set(flight.flown.date, [flight]);
    else day.push(flight);
  }
  return [...days]
    .sort(([a], [b]) => compare(a, b))
    .flatMap(([, day]) => partByMoment(day, ({ flown }) => flown))
    .flatMap((level) => [...level].sort((a, b) => a.number - b.number || compare(a.entry, b.entry)));
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
