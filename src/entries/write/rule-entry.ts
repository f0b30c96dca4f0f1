import type { Change } from './after.ts';
import { written } from './rule-flight.ts';

/** What officials measured of a model, as it was read off; null where it was not measured. */
export interface Measured {
  readonly date: string;
  readonly by: string;
  readonly span: string | null;
  readonly 'wing-area': string | null;
  readonly airframe: string | null;
  readonly rubber: string | null;
  readonly balance: string | null;
}

/** The changes that add an inspection to those there are. */
export function addInspection({ date, by, ...measures }: Measured): Change[] {
  return [{ do: 'append', at: ['inspected'], value: written({ date, by, ...measures }) }];
}

/** The changes that take an entry out of the places. */
export function disqualify(decision: {
  readonly reason: string;
  readonly by: string;
  readonly date: string;
}): Change[] {
  return [{ do: 'set', at: ['disqualified'], value: { ...decision } }];
}

/** The changes that give an entry its places back. */
export function reinstate(): Change[] {
  return [{ do: 'remove', at: ['disqualified'] }];
}
