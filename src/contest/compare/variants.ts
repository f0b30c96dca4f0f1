import type { Challenge } from '../../model/challenge.ts';
import type { Contender } from '../contender.ts';
import { type Family, isNotARule, type NotARule } from './family.ts';
import { maximum } from './maximum.ts';
import { method } from './method.ts';
import { provisional } from './provisional.ts';
import { scale } from './scale.ts';
import { combine, resolution, round } from './timing.ts';

/** The rules of a challenge with one of them chosen otherwise. */
export interface Variant {
  /** Such as `method=sum:3`. */
  readonly id: string;
  readonly challenge: Challenge;
}

/** Every rule that can be tried otherwise, in the order in which they are told. */
export const families: readonly Family[] = [method, resolution, round, combine, maximum, scale, provisional];

/**
 * The variants of a challenge: for each option its choices, or the usual ones of every option where none is given. What
 * the rules say already is left out. A sentence instead where a choice cannot be read or tried.
 */
export function variantsOf(
  challenge: Challenge,
  contenders: readonly Contender[],
  chosen: ReadonlyMap<string, readonly string[]>,
): readonly Variant[] | NotARule {
  const variants: Variant[] = [];
  for (const family of families) {
    const choices =
      chosen.get(family.option) ?? (chosen.size === 0 ? family.usual(challenge, contenders) : []);
    for (const choice of new Set(choices)) {
      const changed = family.change(challenge, contenders, choice);
      if (changed === null) continue;
      if (!isNotARule(changed)) variants.push({ id: `${family.option}=${choice}`, challenge: changed });
      // A usual choice that finds nothing to work on here, such as a handicap by a figure nobody has, is no fault.
      else if (chosen.size > 0) return changed;
    }
  }
  return variants;
}
