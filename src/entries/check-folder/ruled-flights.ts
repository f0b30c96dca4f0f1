import type { Entry } from '../../model/entry.ts';
import type { FlightRuling } from '../../model/ruling.ts';
import type { Understood } from '../folder/content.ts';
import type { Gathered } from '../folder/gathered.ts';
import type { SourceDocument } from '../source/source.ts';

/** One ruling on a flight beside the entry it is about. */
export interface RuledFlight {
  readonly ruled: FlightRuling;
  /** Its place in the list of its file. */
  readonly index: number;
  /** The file of the ruling. */
  readonly source: SourceDocument;
  readonly entry: Understood<Entry>;
}

/** Every ruling on a flight of an entry that is there. */
export function ruledFlights({ entries, rulings }: Gathered): RuledFlight[] {
  const byAddress = new Map(entries.map((entry) => [`${entry.value.challenge}/${entry.value.id}`, entry]));
  return rulings.flatMap(({ value, source }) => {
    const entry = byAddress.get(`${value.challenge}/${value.entry}`);
    return entry === undefined ? [] : value.flights.map((ruled, index) => ({ ruled, index, source, entry }));
  });
}
