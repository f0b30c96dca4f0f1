import type { FigureSet } from '../figures/figure.ts';
import type { Challenge } from '../model/challenge.ts';
import type { Contender } from './contender.ts';
import type { FrozenResult } from './frozen/frozen.ts';
import { thaw } from './frozen/thaw.ts';
import { byClaim, claimOf } from './ranking/claims.ts';
import { divisionsMet } from './ranking/divisions.ts';
import { headlineOf } from './ranking/headline.ts';
import { rank } from './ranking/rank.ts';
import { scoreOf } from './ranking/score.ts';
import type { ScoringFlight } from './ranking/scoring-flight.ts';
import type { Scored } from './ranking/tie-break.ts';
import { challengeState } from './rules/state.ts';
import type { ContestResult, JudgedEntry } from './standing.ts';
import { judgeFlights } from './verdicts/judge-flights.ts';

/** One entry on its way to a place. */
interface Candidate {
  readonly judged: JudgedEntry;
  readonly scoring: readonly ScoringFlight[];
  readonly headline: () => FigureSet;
}

/**
 * Everything the rules say about the entries of a challenge: statuses, standings, claims, divisions. `now` is ISO 8601;
 * its date as written decides the state. With a frozen result, places, times and statuses are those of the frozen one,
 * also of entries that are no longer there. The order of the contenders does not matter.
 */
export function judge(
  challenge: Challenge,
  contenders: readonly Contender[],
  when: { readonly now: string; readonly frozen: FrozenResult | null },
): ContestResult {
  const computed = compute(challenge, contenders, when.now);
  return when.frozen === null ? computed : thaw(challenge, contenders, computed, when.frozen);
}

function compute(challenge: Challenge, contenders: readonly Contender[], now: string): ContestResult {
  const inOrder = [...contenders].sort((a, b) => (a.entry.id < b.entry.id ? -1 : 1));
  const candidates = inOrder.map((contender) => candidate(challenge, contender));
  const placed = candidates.filter(({ judged }) => judged.unplaced === null);
  const tables = new Map(
    challenge.divisions.map(({ id }) => [
      id,
      scoredIn(challenge, placed, (flight) => flight.divisions.includes(id)),
    ]),
  );
  const memberships = new Map<string, string[]>();
  for (const [id, scored] of tables)
    for (const { entry } of scored) memberships.set(entry, [...(memberships.get(entry) ?? []), id]);
  const divisionsOf = (entry: string) => memberships.get(entry) ?? [];
  const standings = rank(
    challenge,
    scoredIn(challenge, placed, () => true),
    divisionsOf,
  );
  const scores = new Map(standings.map(({ entry, score }) => [entry, score]));
  const claims = candidates
    .filter(({ judged }) => judged.unplaced === null || judged.unplaced === noCountedFlight)
    .map(({ judged, scoring }) => claimOf(challenge, judged.entry, scoring, scores.get(judged.entry) ?? null))
    .filter((claim) => claim !== null)
    .sort(byClaim);
  return {
    state: challengeState(challenge, now.slice(0, 10), false),
    entries: new Map(
      candidates.map(({ judged }) => [
        judged.entry,
        judged.unplaced === null ? { ...judged, divisions: divisionsOf(judged.entry) } : judged,
      ]),
    ),
    standings,
    claims,
    unplaced: candidates.flatMap(({ judged: { entry, unplaced } }) =>
      unplaced === null ? [] : [{ entry, reason: unplaced }],
    ),
    divisions: new Map([...tables].map(([id, scored]) => [id, rank(challenge, scored, divisionsOf)])),
  };
}

const noCountedFlight = 'no counted flight';

function candidate(challenge: Challenge, contender: Contender): Candidate {
  const known = remembering(contender);
  const { flights, scoring } = judgeFlights(challenge, known);
  const headline = headlineOf(contender.entry, flights);
  const setup = contender.entry.setups.find(({ id }) => id === headline.headlineSetup);
  const { design } = setup ?? contender.entry.setups[0];
  const figures = () => known.modelFigures(headline.headlineSetup);
  return {
    scoring,
    headline: figures,
    judged: {
      entry: contender.entry.id,
      flights,
      ...headline,
      // Of an entry without a place: where its headline setup would belong.
      divisions:
        challenge.divisions.length === 0
          ? []
          : divisionsMet(challenge, { design, junior: contender.junior, figures: figures() }),
      unplaced: whyUnplaced(challenge, contender, scoring),
    },
  };
}

/** A disqualification comes before a withdrawal, so that nobody can withdraw from it. */
function whyUnplaced(
  challenge: Challenge,
  contender: Contender,
  scoring: readonly ScoringFlight[],
): string | null {
  if (contender.ruling !== null && contender.ruling.disqualified !== null) return 'disqualified';
  if (contender.entry.withdrawn !== null) return 'withdrawn';
  return scoreOf(challenge, countedOf(challenge, scoring)) === null ? noCountedFlight : null;
}

function countedOf(challenge: Challenge, scoring: readonly ScoringFlight[]): readonly ScoringFlight[] {
  return challenge.scoring.provisional === 'ranked' ? scoring : scoring.filter(({ accepted }) => accepted);
}

/** The scores of a table that takes only some of the flights; who has none of them is not in it. */
function scoredIn(
  challenge: Challenge,
  placed: readonly Candidate[],
  takes: (flight: ScoringFlight) => boolean,
): readonly Scored[] {
  return placed.flatMap(({ judged, scoring, headline }) => {
    const score = scoreOf(challenge, countedOf(challenge, scoring).filter(takes));
    return score === null ? [] : [{ entry: judged.entry, score, headline }];
  });
}

/** The same contender, asking for the figures of each setup once only. */
function remembering(contender: Contender): Contender {
  const known = new Map<string | null, FigureSet>();
  const modelFigures = (setup: string | null) => {
    const figures = known.get(setup) ?? contender.modelFigures(setup);
    known.set(setup, figures);
    return figures;
  };
  return { ...contender, modelFigures };
}
