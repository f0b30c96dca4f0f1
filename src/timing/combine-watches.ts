import type { TimingRules } from '../model/challenge.ts';
import { compareDecimal, type Exact, exactly, meanDecimal } from '../quantities/decimal.ts';

/** The one exact time that several watches give, and how many readings share in its uncertainty. */
export interface CombinedTime {
  readonly seconds: Exact;
  /** All of them for a mean, 1 where a single reading decides. */
  readonly watches: number;
}

/**
 * Combines the readings of one flight, in seconds and as exact decimals. The median of an even number of watches is the
 * mean of the middle two. Throws RangeError where there is no reading.
 */
export function combineWatches(readings: readonly number[], how: TimingRules['combine']): CombinedTime {
  const sorted = readings.map(exactly).sort(compareDecimal);
  if (how === 'mean') return { seconds: meanDecimal(sorted), watches: sorted.length };
  if (how === 'lowest') return { seconds: meanDecimal(sorted.slice(0, 1)), watches: 1 };
  const middle = (sorted.length - 1) / 2;
  return { seconds: meanDecimal(sorted.slice(Math.floor(middle), Math.ceil(middle) + 1)), watches: 1 };
}
