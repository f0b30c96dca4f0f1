import type { Origin } from '../quantities/quantity.ts';
import type { Basis } from './figure.ts';

/**
 * What a figure rests on, the weakest first: an assumption; a bench log or test; only values that stand in a ruling;
 * measurements of the builder. Exact numbers say nothing either way.
 */
export function basisOf(origins: Iterable<Origin>, assumed: boolean): Basis {
  const seen = new Set(origins);
  if (assumed || seen.has('assumed')) return 'partly assumed';
  if (seen.has('logged')) return 'logged';
  if (seen.has('inspected') && !seen.has('measured')) return 'inspected';
  return 'measured';
}
