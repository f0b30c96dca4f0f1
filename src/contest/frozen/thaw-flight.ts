import type { Challenge } from '../../model/challenge.ts';
import type { OfficialTime } from '../../timing/official-time.ts';
import { flightScore } from '../ranking/scoring-flight.ts';
import type { JudgedFlight } from '../standing.ts';
import { reaches } from '../verdicts/judge-flights.ts';
import type { FrozenResult } from './frozen.ts';

type FrozenFlight = FrozenResult['entries'][number]['flights'][number];

/** The reason of a flight or an entry that came after the result was frozen. */
export const notInResult = 'not part of the final result';

/**
 * A flight as the final result has it, with what the frozen result does not keep taken from the flight as it is written
 * now; a flight that the result does not know never counts. `round` is the round it was flown in, where it names one.
 */
export function thawFlight(
  challenge: Challenge,
  target: Challenge['target'],
  now: JudgedFlight,
  frozen: FrozenFlight | undefined,
  round: string | null,
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
  const { mayScore, counted } = standingOf(challenge, frozen);
  const sameTime = frozen.official === now.official.seconds;
  const official: OfficialTime = sameTime
    ? now.official
    : { ...now.official, seconds: frozen.official, explanation: inTheResult(frozen) };
  const scored = mayScore ? scoreThen(challenge, now, official, round) : null;
  return {
    ...now,
    date: frozen.date,
    official,
    status: frozen.status,
    reason: frozen.reason,
    score: scored?.rounded ?? null,
    scoreU: scored?.u ?? 0,
    counted,
    stale: [],
    reachedTarget: counted && reaches({ target }, frozen.official),
  };
}

/** A flight that the entry no longer tells of: it stays as it was frozen, with what a frozen result keeps. */
export function goneFlight(
  challenge: Challenge,
  target: Challenge['target'],
  frozen: FrozenFlight,
): JudgedFlight {
  const { mayScore, counted } = standingOf(challenge, frozen);
  const official = { seconds: frozen.official, u: 0, ruled: false, explanation: inTheResult(frozen) };
  const unscaled = challenge.scoring.scale === null && challenge.scoring.method !== 'rounds';
  return {
    number: frozen.number,
    date: frozen.date,
    official,
    status: frozen.status,
    reason: frozen.reason,
    setup: null,
    score: mayScore && unscaled ? flightScore(challenge, official, null, 1).rounded : null,
    scoreU: 0,
    counted,
    stale: [],
    reachedTarget: counted && reaches({ target }, frozen.official),
  };
}

function standingOf({ scoring }: Challenge, { status }: FrozenFlight) {
  const mayScore = status === 'accepted' || status === 'provisional';
  return { mayScore, counted: status === 'accepted' || (mayScore && scoring.provisional === 'ranked') };
}

function inTheResult({ official }: FrozenFlight): string {
  return `${official} s in the final result`;
}

/** The score of the frozen time under the handicap the aircraft has now; null where that is not known. */
function scoreThen(
  challenge: Challenge,
  now: JudgedFlight,
  official: OfficialTime,
  round: string | null,
): { readonly rounded: number; readonly u: number } | null {
  if (now.score !== null && now.official.seconds === official.seconds)
    return { rounded: now.score, u: now.scoreU };
  return challenge.scoring.scale === null ? flightScore(challenge, official, round, 1) : null;
}
