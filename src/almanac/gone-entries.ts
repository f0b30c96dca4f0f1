import type { FrozenResult } from '../contest/frozen/frozen.ts';
import type { JudgedEntry } from '../contest/standing.ts';
import type { Almanac, ChallengeRecord } from './almanac.ts';

/** An entry whose folder is gone and whose flights a final result still tells. */
export interface GoneEntry {
  readonly home: ChallengeRecord;
  /** As it was frozen. */
  readonly entry: FrozenResult['entries'][number];
  readonly judged: JudgedEntry;
}

/**
 * Every entry that only a final result still knows, by challenge. One whose folder is there and cannot be read is not gone:
 * it is being looked at.
 */
export function goneEntries({
  challenges,
  leftOut,
}: Pick<Almanac, 'challenges' | 'leftOut'>): readonly GoneEntry[] {
  return challenges.flatMap((home) => {
    const there = new Set([
      ...home.entries.map(({ entry }) => entry.id),
      ...leftOut.filter(({ challenge }) => challenge === home.challenge.id).map(({ entry }) => entry),
    ]);
    return (home.frozen?.entries ?? []).flatMap((entry): GoneEntry[] => {
      const judged = home.result.entries.get(entry.id);
      return there.has(entry.id) || judged === undefined ? [] : [{ home, entry, judged }];
    });
  });
}
