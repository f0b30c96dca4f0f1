import type { Challenge } from '../../model/challenge.ts';
import type { Contender } from '../contender.ts';
import { judge } from '../judge.ts';
import type { Standing } from '../standing.ts';
import { type Moves, movesBetween } from './moves.ts';
import type { Variant } from './variants.ts';

/** One variant with its table and what it does to the places. */
export interface ComparedVariant extends Moves {
  readonly id: string;
  readonly challenge: Challenge;
  readonly standings: readonly Standing[];
}

export interface Comparison {
  /** The table under the rules as they are, worked out from the entries also where a result is frozen. */
  readonly board: readonly Standing[];
  readonly variants: readonly ComparedVariant[];
}

/**
 * The table of a challenge under its own rules and under each variant, and who moves. `now` is ISO 8601. A frozen result
 * takes no part: it is what would have been.
 */
export function compareRules(
  challenge: Challenge,
  contenders: readonly Contender[],
  variants: readonly Variant[],
  now: string,
): Comparison {
  const tableOf = (rules: Challenge) => judge(rules, contenders, { now, frozen: null }).standings;
  const board = tableOf(challenge);
  return {
    board,
    variants: variants.map((variant) => {
      const standings = tableOf(variant.challenge);
      return { ...variant, standings, ...movesBetween(board, standings) };
    }),
  };
}
