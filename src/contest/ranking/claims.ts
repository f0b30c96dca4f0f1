import type { Challenge } from '../../model/challenge.ts';
import type { Claim } from '../standing.ts';
import { scoreOf } from './score.ts';
import type { ScoringFlight } from './scoring-flight.ts';

/**
 * What an entry would score if every provisional flight were accepted; null where that is what it scores already, and
 * where provisional flights are ranked anyway.
 */
export function claimOf(
  challenge: Challenge,
  entry: string,
  scoring: readonly ScoringFlight[],
  counted: number | null,
): Claim | null {
  if (challenge.scoring.provisional === 'ranked') return null;
  const claimed = scoreOf(
    challenge,
    scoring.map((flight) => ({ ...flight, accepted: true })),
  );
  if (claimed === null || claimed.score === counted) return null;
  return { entry, score: claimed.score, flights: claimed.used.map(({ number }) => number) };
}

/** The longest claim first, equal ones in the order of the entries' ids. */
export function byClaim(a: Claim, b: Claim): number {
  return b.score - a.score || (a.entry < b.entry ? -1 : 1);
}
