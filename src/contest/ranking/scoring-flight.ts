import type { Moment } from '../../model/calendar.ts';
import type { Challenge } from '../../model/challenge.ts';
import { roundDecimal, significant } from '../../quantities/decimal.ts';
import type { OfficialTime } from '../../timing/official-time.ts';

/** A flight that may score: its status is accepted or provisional. */
export interface ScoringFlight {
  readonly number: number;
  readonly date: Moment;
  readonly round: string | null;
  readonly accepted: boolean;
  /** Seconds, capped, then scaled; not yet rounded. */
  readonly score: number;
  /** The score as it is compared and printed. */
  readonly rounded: number;
  /** Of the score; 0 at a maximum. */
  readonly u: number;
  readonly atMaximum: boolean;
  readonly divisions: readonly string[];
}

/** Scores are rounded to this many seconds, a half up, before they are compared. */
const scoreResolution = '0.001';

/** A score as it is compared and printed. The last bits of binary arithmetic are taken away before a half is looked for. */
export function roundScore(score: number): number {
  return roundDecimal(significant(score), scoreResolution, 'nearest');
}

/** The score of one official time under the cap of the flying, or of its round, and a scale factor. */
export function flightScore(
  challenge: Challenge,
  official: OfficialTime,
  round: string | null,
  factor: number,
): Pick<ScoringFlight, 'score' | 'rounded' | 'u' | 'atMaximum'> {
  const maximum =
    challenge.scoring.method === 'rounds'
      ? (challenge.rounds.find(({ id }) => id === round)?.maximum ?? null)
      : challenge.flying.maximum;
  const atMaximum = maximum !== null && official.seconds >= maximum;
  const score = (atMaximum ? maximum : official.seconds) * factor;
  return {
    score,
    rounded: roundScore(score),
    u: atMaximum ? 0 : official.u * factor,
    atMaximum,
  };
}

/** The better first: by rounded score, then accepted before provisional, then the lower number. */
export function betterFirst(a: ScoringFlight, b: ScoringFlight): number {
  return b.rounded - a.rounded || Number(b.accepted) - Number(a.accepted) || a.number - b.number;
}
