import type { Entry } from '../model/entry.ts';

/**
 * The place of the setup in force on a calendar date. Setups stand in the order of their dates; the first has none and is
 * always in force before the others.
 */
export function setupInForce(setups: Entry['setups'], date: string): number {
  let found = 0;
  setups.forEach((setup, index) => {
    if (setup.from !== null && setup.from <= date) found = index;
  });
  return found;
}
