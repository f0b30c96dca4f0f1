import type { Content, ReadEntry } from '../../entries/folder/content.ts';
import type { FlightRuling } from '../../model/ruling.ts';
import type { Almanac, ChallengeRecord, EntryRecord } from '../almanac.ts';

/** A content folder at one moment, read and put together. */
export interface Side {
  readonly content: Content;
  readonly almanac: Almanac;
  /** What stands in each of its files, as a digest, by path. */
  readonly digests: ReadonlyMap<string, string>;
}

/** Both sides of a change. Both almanacs are of the same moment, so that only what was written differs. */
export interface Sides {
  readonly before: Side;
  readonly after: Side;
}

/** One aircraft on one side: as it was read, and as it was judged. */
export interface EntryOnSide {
  readonly read: ReadEntry;
  readonly record: EntryRecord;
}

/** The entries of a side that can be read, by `<challenge>/<entry>`. */
export function entriesOf({ content, almanac }: Side): ReadonlyMap<string, EntryOnSide> {
  const records = new Map<string, EntryRecord>(
    almanac.challenges.flatMap(({ entries }) =>
      entries.map((record) => [`${record.challenge}/${record.entry.id}`, record] as const),
    ),
  );
  return new Map(
    content.entries.flatMap((read) => {
      const key: string = `${read.value.challenge}/${read.value.id}`;
      const record = records.get(key);
      return record === undefined ? [] : [[key, { read, record }] as const];
    }),
  );
}

/** The rulings on the flights of an aircraft, by number; none where there is no such aircraft. */
export function rulingsOn(side: EntryOnSide | null): ReadonlyMap<number, FlightRuling> {
  return new Map((side?.record.ruling?.flights ?? []).map((ruling) => [ruling.flight, ruling]));
}

/** A challenge of a side; null where it has none of that name that can be read. */
export function challengeOf({ almanac }: Side, id: string): ChallengeRecord | null {
  return almanac.challenges.find(({ challenge }) => challenge.id === id) ?? null;
}
