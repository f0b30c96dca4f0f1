import type { Challenge } from '../../model/challenge.ts';
import type { Flight } from '../../model/entry.ts';
import { officialTime } from '../../timing/official-time.ts';
import type { Contender } from '../contender.ts';
import { divisionsMet } from '../ranking/divisions.ts';
import { flightScore, type ScoringFlight } from '../ranking/scoring-flight.ts';
import { figuresForLimits } from '../rules/figures-for-limits.ts';
import { scaleFactor } from '../rules/scale.ts';
import { setupOfFlight } from '../rules/setup-of-flight.ts';
import type { JudgedFlight } from '../standing.ts';
import { beyondAllowance } from './allowance.ts';
import { type FlightCase, isSettled } from './flight-case.ts';
import { staleOf } from './ruling-fits.ts';
import { statusOf } from './status.ts';

/** The flights of one entry, in number order: what became of each, and those that may score. */
export interface JudgedFlights {
  readonly flights: readonly JudgedFlight[];
  readonly scoring: readonly ScoringFlight[];
}

/** Judges every flight of an entry by the rules and the rulings. The order in which they are written does not matter. */
export function judgeFlights(challenge: Challenge, contender: Contender): JudgedFlights {
  const inOrder = [...contender.entry.flights].sort((a, b) => a.number - b.number);
  const rulings = new Map(contender.ruling?.flights.map((ruling) => [ruling.flight, ruling]));
  const beyond = beyondAllowance(
    inOrder,
    challenge.flying,
    (flight) => rulings.get(flight.number)?.verdict === 'void',
  );
  const scoring: ScoringFlight[] = [];
  const flights = inOrder.map((flight) => {
    const one = flightCase(challenge, contender, flight, beyond.get(flight.number) ?? null);
    const { status, reason } = statusOf(one);
    const mayScore = status === 'accepted' || status === 'provisional';
    const scored = mayScore ? scoringFlight(one, status === 'accepted') : null;
    if (scored !== null) scoring.push(scored);
    const counted = status === 'accepted' || (mayScore && challenge.scoring.provisional === 'ranked');
    return {
      number: flight.number,
      date: flight.date.date,
      official: one.official,
      status,
      reason,
      setup: one.setup.id,
      score: scored?.rounded ?? null,
      scoreU: scored?.u ?? 0,
      counted,
      stale: one.ruling?.verdict === 'accepted' ? one.stale : [],
      reachedTarget: counted && reaches(challenge, one.official.seconds),
    };
  });
  return { flights, scoring };
}

/** True where an official time is long enough for the honour roll; no tolerance. False where there is no target. */
export function reaches(challenge: Pick<Challenge, 'target'>, seconds: number): boolean {
  return challenge.target !== null && seconds >= challenge.target.time;
}

function flightCase(
  challenge: Challenge,
  contender: Contender,
  flight: Flight,
  beyond: string | null,
): FlightCase {
  const setup = setupOfFlight(contender.entry, flight);
  const ruling = contender.ruling?.flights.find((one) => one.flight === flight.number) ?? null;
  const stale = ruling === null ? [] : staleOf(challenge, contender, flight, ruling);
  return {
    challenge,
    flight,
    setup,
    junior: contender.junior,
    figures: figuresForLimits(contender, flight, setup.id),
    ruling,
    stale,
    official: officialTime(flight, challenge.timing, stale.length === 0 ? (ruling?.time ?? null) : null),
    beyondAllowance: beyond,
  };
}

function scoringFlight(one: FlightCase, accepted: boolean): ScoringFlight {
  const { challenge, flight, figures, setup, junior, ruling } = one;
  const factor = scaleFactor(challenge.scoring, figures);
  // A flight that cannot be scaled is ineligible and never comes here.
  const score = flightScore(challenge, one.official, flight.round, typeof factor === 'number' ? factor : 0);
  return {
    number: flight.number,
    date: flight.date,
    round: flight.round,
    accepted,
    ...score,
    divisions: divisionsMet(
      challenge,
      { design: setup.design, junior, figures },
      isSettled(one) ? (ruling?.asRuled ?? null) : null,
    ),
  };
}
