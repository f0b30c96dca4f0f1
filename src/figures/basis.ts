import type { Origin } from '../quantities/quantity.ts';
import type { Basis } from './figure.ts';

/**
 * What a figure rests on, the weakest first: an assumption; a bench log or test; only values that stand in a ruling;
 * measurements of the builder. Exact numbers say nothing either way.
 */
export function basisOf(origins: Iterable<Origin>, assumed: boolean): Basis {
  if (assumed) return 'partly assumed';
  let [logged, inspected, measured] = [false, false, false];
  for (const origin of origins) {
    if (origin === 'assumed') return 'partly assumed';
    if (origin === 'logged') logged = true;
    if (origin === 'inspected') inspected = true;
    if (origin === 'measured') measured = true;
  }
  if (logged) return 'logged';
  return inspected && !measured ? 'inspected' : 'measured';
}
