import type { Challenge } from '../../model/challenge.ts';
import type { Score } from './score.ts';
import { betterFirst, roundScore, type ScoringFlight } from './scoring-flight.ts';

/**
 * A score by rounds: the sum of the best flight of each round, capped at the round's maximum. Who has every maximum
 * goes to the fly-offs, in their order; who fills one goes to the next. A fly-off flight of anyone else is ignored.
 * Null where no flight counts: fly-offs alone make no score.
 */
export function scoreRounds(challenge: Challenge, counted: readonly ScoringFlight[]): Score | null {
  const sorted = [...counted].sort(betterFirst);
  const best = (round: string) => sorted.find((flight) => flight.round === round);
  const rounds = challenge.rounds.filter(({ flyOff }) => !flyOff);
  const used = rounds.flatMap(({ id }) => best(id) ?? []);
  if (used.length === 0) return null;
  const full = rounds.every(({ id }) => best(id)?.atMaximum === true);
  const flyOffs: ScoringFlight[] = [];
  for (const round of full ? challenge.rounds.filter(({ flyOff }) => flyOff) : []) {
    const flown = best(round.id);
    if (flown === undefined) break;
    flyOffs.push(flown);
    if (!flown.atMaximum) break;
  }
  const inRounds = sorted.filter((flight) => rounds.some(({ id }) => id === flight.round));
  const all = [...used, ...flyOffs];
  return {
    score: roundScore(used.reduce((sum, { score }) => sum + score, 0)),
    u: Math.hypot(...used.map(({ u }) => u)),
    used: all,
    left: inRounds.filter((flight) => !used.includes(flight)).map(({ rounded }) => rounded),
    provisional: all.some(({ accepted }) => !accepted),
    full,
    flyOffs: flyOffs.map(({ rounded }) => rounded),
  };
}
