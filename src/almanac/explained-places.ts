import type { FrozenResult } from '../contest/frozen/frozen.ts';
import { placeInWords } from '../contest/ranking/place-in-words.ts';
import type { ContestResult, Standing } from '../contest/standing.ts';
import type { Challenge } from '../model/challenge.ts';
import type { Entry } from '../model/entry.ts';

/** For every place of a challenge, the one line that explains it. */
export interface ExplainedPlaces {
  /** By entry, in the table of all. */
  readonly overall: ReadonlyMap<string, string>;
  /** By division, then by entry. */
  readonly divisions: ReadonlyMap<string, ReadonlyMap<string, string>>;
}

/** Explains every place of every table. Names of entries that are gone come from the frozen result. */
export function explainPlaces(
  challenge: Challenge,
  result: ContestResult,
  entries: readonly Entry[],
  frozen: FrozenResult | null,
): ExplainedPlaces {
  const known = new Map(entries.map((entry) => [entry.id, entry]));
  const kept = new Map((frozen?.entries ?? []).map(({ id, name }) => [id, name]));
  const sources = {
    challenge,
    result,
    entry: (id: string) => known.get(id),
    name: (id: string) => known.get(id)?.name ?? kept.get(id) ?? id,
  };
  const explained = (table: readonly Standing[]) =>
    new Map(table.map((row) => [row.entry, placeInWords(sources, table, row)]));
  return {
    overall: explained(result.standings),
    divisions: new Map([...result.divisions].map(([id, table]) => [id, explained(table)])),
  };
}
