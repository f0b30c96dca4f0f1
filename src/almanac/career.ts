import type { AcceptedFlight } from '../contest/history/accepted-flight.ts';
import type { Almanac, BuilderRecord, ChallengeRecord } from './almanac.ts';
import { goneEntries } from './gone-entries.ts';

/** One aircraft of a builder in one challenge. */
export interface CareerEntry {
  readonly home: ChallengeRecord;
  /** First name of its address. */
  readonly entry: string;
  readonly name: string;
  /** Accepted flights. */
  readonly accepted: number;
  /** The longest of them, the first flown of equal ones; null where there is none. */
  readonly best: AcceptedFlight | null;
}

/** What a builder did in all challenges of the site, also with aircraft that only a final result still tells of. */
export interface Career {
  /** Challenges as the almanac sorts them, the newest first; aircraft by id. */
  readonly entries: readonly CareerEntry[];
  /** The longest accepted flight of all; of equal ones that of the earlier day. */
  readonly best: (CareerEntry & { readonly best: AcceptedFlight }) | null;
  readonly accepted: number;
}

/**
 * Puts together what a builder did, from the accepted flights that the history of each challenge tells: those of a
 * withdrawn aircraft count for nobody.
 */
export function careerOf(
  almanac: Pick<Almanac, 'challenges' | 'leftOut'>,
  { builder, entries: built }: Pick<BuilderRecord, 'builder' | 'entries'>,
): Career {
  const mine = new Set(built.map(({ challenge, entry }) => `${challenge}/${entry}`));
  const gone = goneEntries(almanac).filter(({ entry }) => entry.builders.includes(builder.handle));
  const entries = almanac.challenges.flatMap((home) =>
    [
      ...home.entries.map(({ entry }) => entry).filter(({ id }) => mine.has(`${home.challenge.id}/${id}`)),
      ...gone.filter((one) => one.home === home).map(({ entry }) => entry),
    ]
      .sort((a, b) => (a.id < b.id ? -1 : 1))
      .map(({ id, name }): CareerEntry => {
        const flights = home.history.flights.filter(({ entry }) => entry === id);
        return { home, entry: id, name, accepted: flights.length, best: longest(flights) };
      }),
  );
  const best = entries
    .flatMap((one) => (one.best === null ? [] : [{ ...one, best: one.best }]))
    .reduce<Career['best']>((top, one) => (top === null || beats(one.best, top.best) ? one : top), null);
  return { entries, best, accepted: entries.reduce((sum, { accepted }) => sum + accepted, 0) };
}

function longest(flights: readonly AcceptedFlight[]): AcceptedFlight | null {
  return flights.reduce<AcceptedFlight | null>(
    (top, flight) => (top === null || flight.seconds > top.seconds ? flight : top),
    null,
  );
}

function beats(one: AcceptedFlight, other: AcceptedFlight): boolean {
  if (one.seconds !== other.seconds) return one.seconds > other.seconds;
  return one.flown.date < other.flown.date;
}
