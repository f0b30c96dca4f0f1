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
  return challenges.flatMap((home) => {
    // Every page of an entry asks, and hardly any entry names another.
    const named = new Set(entry.also.filter((place) => place.startsWith(`${home.challenge.id}/`)));
    return home.entries
      .filter(({ entry: other }) => {
        const names = other.also.length > 0 && other.also.includes(self);
        if (!names && named.size === 0) return false;
        const place = `${home.challenge.id}/${other.id}`;
        return place !== self && (names || named.has(place));
      })
      .map((record) => ({ home, record }));
  });
}
