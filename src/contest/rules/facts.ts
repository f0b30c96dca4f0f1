import type { Fact } from '../../model/challenge.ts';
import type { Design } from '../../model/design.ts';

/** Declared facts, in the order in which they are checked and written. */
export const facts: readonly Fact[] = ['control', 'onboard', 'layout', 'origin', 'junior'];

/** What an aircraft and its builders declare, as rules compare it; an origin not stated is null. */
export type FactValue = string | boolean | readonly string[] | null;

/** A declared fact of a design in one setup; whether its builders are juniors is known elsewhere. */
export function factValue(fact: Fact, design: Design, junior: boolean): FactValue {
  switch (fact) {
    case 'control':
      return design.control;
    case 'onboard':
      return design.onboard;
    case 'layout':
      return design.layout;
    case 'origin':
      return design.origin;
    case 'junior':
      return junior;
  }
}
