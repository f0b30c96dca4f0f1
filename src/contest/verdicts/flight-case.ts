import type { FigureSet } from '../../figures/figure.ts';
import type { Challenge } from '../../model/challenge.ts';
import type { Flight, Setup } from '../../model/entry.ts';
import type { FlightRuling } from '../../model/ruling.ts';
import type { OfficialTime } from '../../timing/official-time.ts';
import type { Stale } from '../standing.ts';

/** One flight with all that its status is decided on. */
export interface FlightCase {
  readonly challenge: Challenge;
  readonly flight: Flight;
  readonly setup: Setup;
  readonly junior: boolean;
  /** Of the model in that setup, with the flight's own mass. */
  readonly figures: FigureSet;
  readonly ruling: FlightRuling | null;
  /** What the ruling rests on that is no longer so; empty without a ruling. */
  readonly stale: readonly Stale[];
  readonly official: OfficialTime;
  /** Why the flight is beyond the allowance; null where it is within. */
  readonly beyondAllowance: string | null;
}

/** True where an accepting ruling stands and still fits what is written now. */
export function isSettled({ ruling, stale }: Pick<FlightCase, 'ruling' | 'stale'>): boolean {
  return ruling?.verdict === 'accepted' && stale.length === 0;
}
