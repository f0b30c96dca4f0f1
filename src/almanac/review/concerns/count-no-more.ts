import type { Concern } from '../concern.ts';
import type { ReviewedEntry } from '../review.ts';

/** Accepted flights that stand as they were written and would count no more: by other rules, another mass, another ruling. */
export function countNoMore(entries: readonly ReviewedEntry[]): readonly Concern[] {
  return [...Map.groupBy(entries, ({ challenge }) => challenge)].flatMap(([challenge, some]): Concern[] => {
    const lost = some
      .map(
        ({ flights }) =>
          flights.filter(({ before, after, change }) => {
            return change === 'judged' && before?.status === 'accepted' && after?.status !== 'accepted';
          }).length,
      )
      .filter((count) => count > 0);
    const flights = lost.reduce((sum, count) => sum + count, 0);
    return flights === 0
      ? []
      : [{ kind: 'flights-count-no-more', challenge, flights, aircraft: lost.length }];
  });
}
