import type { Challenge } from '../../model/challenge.ts';
import { scoreRounds } from './score-rounds.ts';
import { betterFirst, roundScore, type ScoringFlight } from './scoring-flight.ts';

/** What one entry scored, in one table. */
export interface Score {
  /** Seconds, rounded half up to 0.001 s. */
  readonly score: number;
  readonly u: number;
  /** The flights of the score, the best first; with rounds in the order of the rounds, fly-offs last. */
  readonly used: readonly ScoringFlight[];
  /** Rounded scores of the flights the total did not use, the best first. */
  readonly left: readonly number[];
  /** True where a flight of the score is not accepted yet. */
  readonly provisional: boolean;
  /** True where every round was flown to its maximum: fly-offs alone decide between such entries. */
  readonly full: boolean;
  /** Rounded scores in the fly-offs, as far as the entry got, in order. */
  readonly flyOffs: readonly number[];
}

/** The score of an entry from its counted flights; null where there is none. Order does not matter. */
export function scoreOf(challenge: Challenge, counted: readonly ScoringFlight[]): Score | null {
  if (counted.length === 0) return null;
  switch (challenge.scoring.method) {
    case 'best':
      return bestOf(counted, 1, 1);
    case 'sum':
      return bestOf(counted, challenge.scoring.flights, 1);
    case 'mean':
      return bestOf(counted, challenge.scoring.flights, challenge.scoring.flights);
    case 'rounds':
      return scoreRounds(challenge, counted);
  }
}

/** The best so many flights, summed and divided; a flight that is missing is 0. */
function bestOf(counted: readonly ScoringFlight[], take: number, divisor: number): Score {
  const sorted = [...counted].sort(betterFirst);
  const used = sorted.slice(0, take);
  return {
    score: roundScore(used.reduce((sum, { score }) => sum + score, 0) / divisor),
    u: Math.hypot(...used.map(({ u }) => u)) / divisor,
    used,
    left: sorted.slice(take).map(({ rounded }) => rounded),
    provisional: used.some(({ accepted }) => !accepted),
    full: false,
    flyOffs: [],
  };
}
