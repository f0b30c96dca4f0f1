import type { Concern } from '../concern.ts';
import type { ReviewedEntry } from '../review.ts';

/** Flights that were taken out or numbered anew, and entries that are gone or cannot be read: what is on record stays there. */
export function goneFlights(entries: readonly ReviewedEntry[]): readonly Concern[] {
  return entries.flatMap(({ challenge, entry, name, change, flights }): Concern[] => {
    const named = { challenge, entry, name };
    if (change === 'removed') return [{ kind: 'entry-removed', ...named }];
    if (change === 'not-readable') return [{ kind: 'entry-not-readable', ...named }];
    return flights.flatMap((flight): Concern[] => {
      if (flight.change === 'removed')
        return [
          {
            kind: 'flight-removed',
            ...named,
            flight: flight.number,
            verdict: flight.ruling?.verdict ?? null,
            seconds: flight.before?.seconds ?? 0,
          },
        ];
      if (flight.was === null) return [];
      return [{ kind: 'flight-renumbered', ...named, was: flight.was, flight: flight.number }];
    });
  });
}
