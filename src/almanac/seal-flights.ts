import type { ReadEntry } from '../entries/folder/content.ts';
import { canonicalFlight } from '../entries/seal.ts';
import { sealOf } from '../entries/seal-of.ts';
import { nodeAt } from '../entries/source/locate.ts';

/** The seal of every flight of an entry as it is written now, by the flight's number. */
export function sealFlights({ source, value }: ReadEntry): ReadonlyMap<number, string> {
  const seals = new Map<number, string>();
  const written = nodeAt(source, ['flights']);
  if (written?.kind !== 'list') return seals;
  const numbers = new Set(value.flights.map(({ number }) => number));
  written.items.forEach((_, index) => {
    const number = nodeAt(source, ['flights', index, 'number']);
    const canonical = canonicalFlight(source, index);
    if (number?.kind !== 'scalar' || canonical === null || !numbers.has(Number(number.text))) return;
    seals.set(Number(number.text), sealOf(canonical));
  });
  return seals;
}
