import type { Challenge } from '../../model/challenge.ts';
import type { Contender } from '../contender.ts';
import { headlineOf } from '../ranking/headline.ts';
import type { ContestResult, JudgedEntry, Standing } from '../standing.ts';
import type { FrozenResult } from './frozen.ts';
import { targetWhenFrozen } from './target-when-frozen.ts';
import { goneFlight, notInResult, thawFlight } from './thaw-flight.ts';

/**
 * A frozen result as pages read it. Places, scores, official times, statuses and reasons are the frozen ones, also of
 * entries that are left out or withdrawn by now; what the frozen result does not keep (uncertainties, setups, how a
 * time came about) is taken from the entries as they are, as far as they still agree.
 */
export function thaw(
  challenge: Challenge,
  contenders: readonly Contender[],
  computed: ContestResult,
  frozen: FrozenResult,
): ContestResult {
  const goal = targetWhenFrozen(challenge, frozen);
  const standings = frozen.standings.map((standing) => ({
    ...standing,
    u: uOf(computed.standings, standing),
  }));
  const overall = new Map(standings.map((standing) => [standing.entry, standing]));
  const unplaced = new Map(frozen.unplaced.map(({ entry, reason }) => [entry, reason]));
  const placed = (id: string, divisions: readonly string[]) => {
    const standing = overall.get(id);
    return {
      divisions: standing?.divisions ?? divisions,
      unplaced: standing === undefined ? (unplaced.get(id) ?? notInResult) : null,
    };
  };
  const entries = contenders.map(({ entry }): JudgedEntry => {
    const flights = frozen.entries.find(({ id }) => id === entry.id)?.flights ?? [];
    const now = computed.entries.get(entry.id);
    const written = (now?.flights ?? []).map((flight) =>
      thawFlight(
        challenge,
        goal,
        flight,
        flights.find(({ number }) => number === flight.number),
        entry.flights.find(({ number }) => number === flight.number)?.round ?? null,
      ),
    );
    const gone = flights
      .filter(({ number }) => !written.some((flight) => flight.number === number))
      .map((flight) => goneFlight(challenge, goal, flight));
    const judged = [...written, ...gone].sort((a, b) => a.number - b.number);
    return {
      entry: entry.id,
      flights: judged,
      ...headlineOf(entry, judged),
      ...placed(entry.id, now?.divisions ?? []),
    };
  });
  const there = new Set(entries.map(({ entry }) => entry));
  const goneEntries = frozen.entries
    .filter(({ id }) => !there.has(id))
    .map(({ id, flights }): JudgedEntry => {
      const judged = flights.map((flight) => goneFlight(challenge, goal, flight));
      return { entry: id, flights: judged, ...headlineOf({ setups: [] }, judged), ...placed(id, []) };
    });
  return {
    state: 'final',
    entries: new Map([...entries, ...goneEntries].map((judged) => [judged.entry, judged])),
    standings,
    claims: frozen.claims,
    unplaced: frozen.unplaced,
    divisions: new Map(
      Object.entries(frozen.divisions).map(([id, rows]) => [
        id,
        thawDivision(rows, overall, computed.divisions.get(id) ?? []),
      ]),
    ),
  };
}

/** The uncertainty of a score as worked out now, where it still is that score; else 0, which says nothing. */
function uOf(
  computed: readonly Standing[],
  { entry, score }: { readonly entry: string; readonly score: number },
): number {
  const now = computed.find((standing) => standing.entry === entry);
  return now?.score === score ? now.u : 0;
}

type FrozenRow = FrozenResult['divisions'][string][number];

/** A division as it was frozen; with all that is known of its rows where it would come out the same today. */
function thawDivision(
  rows: readonly FrozenRow[],
  overall: ReadonlyMap<string, Standing>,
  computed: readonly Standing[],
): readonly Standing[] {
  const same =
    rows.length === computed.length &&
    rows.every(({ place, entry, score }, index) => {
      const now = computed[index];
      return now?.place === place && now.entry === entry && now.score === score;
    });
  if (same) return computed.map((row) => ({ ...row, divisions: overall.get(row.entry)?.divisions ?? [] }));
  return rows.map((row) => divisionRow(row, overall.get(row.entry), computed));
}

/** A frozen row of a division keeps place and score; the rest is that of the whole table where the score is the same. */
function divisionRow(row: FrozenRow, overall: Standing | undefined, computed: readonly Standing[]): Standing {
  const now = computed.find(({ entry, score }) => entry === row.entry && score === row.score);
  const flights = now?.flights ?? (overall?.score === row.score ? overall.flights : []);
  return {
    ...row,
    divisions: overall?.divisions ?? [],
    u: uOf(computed, row),
    provisional: overall?.provisional ?? false,
    flights,
    tieBreak: null,
    withinTimingErrorOf: [],
  };
}
