import type { Measured } from './aircraft.ts';

/**
 * How far two numbers lie apart, in standard uncertainties of their difference, taken as independent (JCGM 100:2008,
 * 5.1.2). Infinite where both are exact and differ.
 */
export function apart(a: Measured, b: Measured): number {
  const difference = Math.abs(a.value - b.value);
  return difference === 0 ? 0 : difference / Math.hypot(a.u, b.u);
}

/** The largest distance between any two of the numbers; null of fewer than two. */
export function furthestApart(numbers: readonly Measured[]): number | null {
  const pairs = numbers.flatMap((one, index) => numbers.slice(index + 1).map((other) => apart(one, other)));
  return pairs.length === 0 ? null : Math.max(...pairs);
}

/** Numbers within so many standard uncertainties of each other are not told apart; the coverage factor of scores, too. */
export const toldApart = 2;
