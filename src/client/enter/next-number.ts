import type { Plain } from '../../entries/source/source.ts';
import { isList, isMap } from '../../entries/write/yaml-text.ts';

/** The number of the next flight: one more than the highest there is, since a number is never used again. */
export function nextNumber(flights: Plain | undefined): string {
  const numbers = (flights !== undefined && isList(flights) ? flights : []).map((flight) =>
    isMap(flight) ? Number(flight.number ?? 0) || 0 : 0,
  );
  return String(Math.max(0, ...numbers) + 1);
}
