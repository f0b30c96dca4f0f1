import type { Setup } from '../../model/entry.ts';
import type { JudgedEntry, JudgedFlight } from '../standing.ts';

/**
 * The flight an entry is known by: of its counted flights the one with the longest official time, before any cap (the
 * lowest number if equal), and the same among the provisional ones; and the setup its headline figures are of: that of
 * the best counted flight, else of the best provisional one, else the latest.
 */
export function headlineOf(
  entry: { readonly setups: readonly Pick<Setup, 'id'>[] },
  flights: readonly JudgedFlight[],
): Pick<JudgedEntry, 'bestCounted' | 'bestProvisional' | 'headlineSetup'> {
  const counted = longest(flights.filter((flight) => flight.counted));
  const provisional = longest(flights.filter(({ status }) => status === 'provisional'));
  const best = counted ?? provisional;
  return {
    bestCounted: counted?.number ?? null,
    bestProvisional: provisional?.number ?? null,
    headlineSetup: best === null ? (entry.setups.at(-1)?.id ?? null) : best.setup,
  };
}

function longest(flights: readonly JudgedFlight[]): JudgedFlight | null {
  return flights.reduce<JudgedFlight | null>((best, flight) => {
    if (best === null || flight.official.seconds > best.official.seconds) return flight;
    return flight.official.seconds === best.official.seconds && flight.number < best.number ? flight : best;
  }, null);
}
