import { type Move, movesBetween } from '../../contest/compare/moves.ts';
import type { Standing } from '../../contest/standing.ts';
import type { ChallengeState } from '../../model/challenge.ts';
import type { ChallengeRecord } from '../almanac.ts';
import { renamedEntries } from './renamed-entries.ts';
import { challengeOf, type Sides } from './side.ts';

/** An entry of a table whose place or score is not what it was. */
export interface ChangedPlace extends Move {
  readonly name: string;
  /** Scores in seconds; null without a place. */
  readonly scoreBefore: number | null;
  readonly scoreAfter: number | null;
}

/** What a change does to the tables of one challenge. */
export interface ChangedPlaces {
  readonly challenge: string;
  readonly title: string;
  readonly state: ChallengeState;
  /** How many have a place now. */
  readonly placed: number;
  readonly overall: readonly ChangedPlace[];
  /** Divisions in which anything changed. */
  readonly divisions: readonly { readonly id: string; readonly changed: readonly ChangedPlace[] }[];
}

/** The tables that are not what they were, in the order of the almanac; challenges that are gone have none. */
export function changedPlaces(sides: Sides): readonly ChangedPlaces[] {
  const nameNow = new Map([...renamedEntries(sides)].map(([now, then]) => [then, now]));
  return sides.after.almanac.challenges.flatMap((after): ChangedPlaces[] => {
    const { id, title, divisions } = after.challenge;
    const before = challengeOf(sides.before, id);
    const names = namesOf(before, after);
    const asNamedNow = (row: Standing): Standing => {
      const now = nameNow.get(`${id}/${row.entry}`);
      return now === undefined ? row : { ...row, entry: now.slice(id.length + 1) };
    };
    const between = (was: readonly Standing[], is: readonly Standing[]) =>
      changedIn(was.map(asNamedNow), is, names);
    const overall = between(before?.result.standings ?? [], after.result.standings);
    const inDivisions = divisions
      .map((division) => ({
        id: division.id,
        changed: between(
          before?.result.divisions.get(division.id) ?? [],
          after.result.divisions.get(division.id) ?? [],
        ),
      }))
      .filter(({ changed }) => changed.length > 0);
    if (overall.length === 0 && inDivisions.length === 0) return [];
    const placed = after.result.standings.length;
    return [{ challenge: id, title, state: after.state, placed, overall, divisions: inDivisions }];
  });
}

function changedIn(
  was: readonly Standing[],
  is: readonly Standing[],
  names: ReadonlyMap<string, string>,
): ChangedPlace[] {
  const [before, after] = [scoresOf(was), scoresOf(is)];
  const moved = movesBetween(was, is).moved;
  const known = new Set(moved.map(({ entry }) => entry));
  const stayed = is
    .filter(({ entry, score }) => !known.has(entry) && before.get(entry) !== score)
    .map(({ entry, place }) => ({ entry, before: place, after: place }));
  return [...moved, ...stayed]
    .sort((a, b) => last(a.after) - last(b.after) || last(a.before) - last(b.before))
    .map((move) => ({
      ...move,
      name: names.get(move.entry) ?? move.entry,
      scoreBefore: before.get(move.entry) ?? null,
      scoreAfter: after.get(move.entry) ?? null,
    }));
}

function scoresOf(table: readonly Standing[]): ReadonlyMap<string, number> {
  return new Map(table.map(({ entry, score }) => [entry, score]));
}

function namesOf(...records: readonly (ChallengeRecord | null)[]): ReadonlyMap<string, string> {
  return new Map(
    records.flatMap((record) => (record?.entries ?? []).map(({ entry }) => [entry.id, entry.name] as const)),
  );
}

function last(place: number | null): number {
  return place ?? Number.MAX_SAFE_INTEGER;
}
