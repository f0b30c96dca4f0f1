import type { Entry } from '../model/entry.ts';
import type { Almanac, ChallengeRecord, EntryRecord } from './almanac.ts';

/** The same aircraft in another challenge. */
export interface Elsewhere {
  readonly home: ChallengeRecord;
  readonly record: EntryRecord;
}

/** Where else an aircraft flew: the entries it names and those that name it, the newest challenge first. */
export function elsewhereOf({ challenges }: Pick<Almanac, 'challenges'>, entry: Entry): readonly Elsewhere[] {
  const self = `${entry.challenge}/${entry.id}`;
  return challenges.flatMap((home) =>
    home.entries
      .filter(({ entry: other }) => {
        const place = `${home.challenge.id}/${other.id}`;
        return place !== self && (entry.also.includes(place) || other.also.includes(self));
      })
      .map((record) => ({ home, record })),
  );
}
