import type { Challenge } from '../../model/challenge.ts';
import type { OfficialTime } from '../../timing/official-time.ts';
import type { Contender } from '../contender.ts';
import { headlineOf } from '../ranking/headline.ts';
import type { ContestResult, JudgedEntry, JudgedFlight, Standing } from '../standing.ts';
import { reaches } from '../verdicts/judge-flights.ts';
import type { FrozenResult } from './frozen.ts';
import { targetWhenFrozen } from './target-when-frozen.ts';

const notInResult = 'not part of the final result';

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
  const entries = contenders.map(({ entry }) => {
    const flights = frozen.entries.find(({ id }) => id === entry.id)?.flights ?? [];
    const now = computed.entries.get(entry.id);
    const judged = (now?.flights ?? []).map((flight) =>
      thawFlight(
        challenge,
        goal,
        flight,
        flights.find(({ number }) => number === flight.number),
      ),
    );
    const standing = overall.get(entry.id);
    return {
      entry: entry.id,
      flights: judged,
      ...headlineOf(entry, judged),
      divisions: standing?.divisions ?? now?.divisions ?? [],
      unplaced: standing === undefined ? (unplaced.get(entry.id) ?? notInResult) : null,
    } satisfies JudgedEntry;
  });
  return {
    state: 'final',
    entries: new Map(entries.map((judged) => [judged.entry, judged])),
    standings,
    claims: frozen.claims,
    unplaced: frozen.unplaced,
    divisions: new Map(
      Object.entries(frozen.divisions).map(([id, rows]) => [
        id,
        rows.map((row) => divisionRow(row, overall.get(row.entry), computed.divisions.get(id) ?? [])),
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

/** A frozen row of a division keeps place and score; the rest is that of the whole table where the score is the same. */
function divisionRow(
  row: { readonly place: number; readonly entry: string; readonly score: number },
  overall: Standing | undefined,
  computed: readonly Standing[],
): Standing {
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

function thawFlight(
  challenge: Challenge,
  target: Challenge['target'],
  now: JudgedFlight,
  frozen: FrozenResult['entries'][number]['flights'][number] | undefined,
): JudgedFlight {
  if (frozen === undefined) {
    const mightCount = now.status === 'accepted' || now.status === 'provisional';
    return {
      ...now,
      status: now.status === 'accepted' ? 'provisional' : now.status,
      reason: mightCount ? notInResult : now.reason,
      counted: false,
      reachedTarget: false,
    };
  }
  const mayScore = frozen.status === 'accepted' || frozen.status === 'provisional';
  const counted = frozen.status === 'accepted' || (mayScore && challenge.scoring.provisional === 'ranked');
  const sameTime = frozen.official === now.official.seconds;
  const official: OfficialTime = sameTime
    ? now.official
    : { ...now.official, seconds: frozen.official, explanation: `${frozen.official} s in the final result` };
  return {
    ...now,
    date: frozen.date,
    official,
    status: frozen.status,
    reason: frozen.reason,
    score: mayScore && sameTime ? now.score : null,
    scoreU: mayScore && sameTime ? now.scoreU : 0,
    counted,
    stale: [],
    reachedTarget: counted && reaches({ target }, frozen.official),
  };
}
