import type { AcceptedFlight } from '../contest/history/accepted-flight.ts';
import type { Almanac, BuilderRecord, ChallengeRecord, EntryRecord } from './almanac.ts';

/** One aircraft of a builder in one challenge. */
export interface CareerEntry {
  readonly home: ChallengeRecord;
  readonly record: EntryRecord;
  /** Accepted flights. */
  readonly accepted: number;
  /** The longest of them, the first flown of equal ones; null where there is none. */
  readonly best: AcceptedFlight | null;
}

/** What a builder did in all challenges of the site. */
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
export function careerOf({ challenges }: Pick<Almanac, 'challenges'>, builder: BuilderRecord): Career {
  const mine = new Set(builder.entries.map(({ challenge, entry }) => `${challenge}/${entry}`));
  const entries = challenges.flatMap((home) =>
    home.entries
      .filter(({ entry }) => mine.has(`${home.challenge.id}/${entry.id}`))
      .map((record): CareerEntry => {
        const flights = home.history.flights.filter(({ entry }) => entry === record.entry.id);
        return { home, record, accepted: flights.length, best: longest(flights) };
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
