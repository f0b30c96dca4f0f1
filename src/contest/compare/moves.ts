import type { Standing } from '../standing.ts';

/** An entry whose place differs; null is no place. */
export interface Move {
  readonly entry: string;
  readonly before: number | null;
  readonly after: number | null;
}

/** What another rule would do to a table. */
export interface Moves {
  /** By the place before, then after. */
  readonly moved: readonly Move[];
  /** Places that are shared now and were not shared by the same entries before; each with who shares it. */
  readonly newlyShared: readonly { readonly place: number; readonly entries: readonly string[] }[];
}

/** Who moves between two tables of the same entries. */
export function movesBetween(before: readonly Standing[], after: readonly Standing[]): Moves {
  const placeIn = (table: readonly Standing[]) => new Map(table.map(({ entry, place }) => [entry, place]));
  const [was, is] = [placeIn(before), placeIn(after)];
  const moved = [...new Set([...was.keys(), ...is.keys()])]
    .map((entry) => ({ entry, before: was.get(entry) ?? null, after: is.get(entry) ?? null }))
    .filter((move) => move.before !== move.after)
    .sort(
      (a, b) =>
        last(a.before) - last(b.before) || last(a.after) - last(b.after) || (a.entry < b.entry ? -1 : 1),
    );
  const sharedBefore = new Set(sharedPlaces(before).map(({ entries }) => entries.join(' ')));
  return {
    moved,
    newlyShared: sharedPlaces(after).filter(({ entries }) => !sharedBefore.has(entries.join(' '))),
  };
}

function sharedPlaces(table: readonly Standing[]): Moves['newlyShared'] {
  const entriesAt = Map.groupBy(table, ({ place }) => place);
  return [...entriesAt]
    .filter(([, standings]) => standings.length > 1)
    .map(([place, standings]) => ({ place, entries: standings.map(({ entry }) => entry).sort() }));
}

/** No place stands behind every place. */
function last(place: number | null): number {
  return place ?? Number.MAX_SAFE_INTEGER;
}
