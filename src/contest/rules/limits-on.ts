import type { Challenge, Limit } from '../../model/challenge.ts';

/** Every limit on one figure that eligibility and divisions set, in their order. */
export function limitsOn(challenge: Challenge, id: string): readonly Limit[] {
  return [
    ...challenge.eligibility,
    ...challenge.divisions.flatMap((division) => division.conditions),
  ].flatMap((condition) => (condition.kind === 'figure' && condition.figure === id ? [condition.limit] : []));
}
