import type { Entry, Flight, Setup } from '../../model/entry.ts';

/**
 * The setup a flight was flown in: the one it names, else the latest whose first day is not after the flight's own
 * calendar date, else the entry as first written. A name that no setup has is left to the date (checking the entry
 * reports it).
 */
export function setupOfFlight(entry: Entry, flight: Pick<Flight, 'setup' | 'date'>): Setup {
  const first = entry.setups[0];
  if (flight.setup === null) return first;
  const named = flight.setup === undefined ? undefined : entry.setups.find(({ id }) => id === flight.setup);
  if (named !== undefined) return named;
  let current = first;
  for (const setup of entry.setups)
    if (setup.from !== null && setup.from <= flight.date.date && setup.from >= (current.from ?? ''))
      current = setup;
  return current;
}
