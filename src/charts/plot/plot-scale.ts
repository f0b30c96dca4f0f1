import { logScale } from '../log-scale.ts';
import { linearScale, type Scale } from '../scale.ts';
import { tickStep } from '../ticks.ts';

/** Room on both sides of equal values, as a share of them. */
const around = 0.1;

/**
 * The scale of one axis of a plot. A linear one begins at the tick below the smallest value, or at zero where that is not
 * far; equal values lie amid an axis, and one without values still has ticks.
 *
 * @param values all that is to be shown, in the units of the axis; above zero for a logarithmic one
 * @param from where the axis starts in the drawing
 * @param to where it ends
 * @param about how many parts a linear axis should have
 */
export function plotScale(
  values: readonly number[],
  logarithmic: boolean,
  from: number,
  to: number,
  about: number,
): Scale {
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (const value of values) {
    low = Math.min(low, value);
    high = Math.max(high, value);
  }
  if (low > high) [low, high] = [1, 1];
  if (logarithmic) return logScale(low, high, from, to);
  if (low === high) {
    const room = low === 0 ? 1 : Math.abs(low) * around;
    [low, high] = [low - room, high + room];
  }
  const start = low >= 0 && low < high / 3 ? 0 : low;
  const step = tickStep(high - start, about);
  return linearScale(Math.floor(start / step + 1e-9) * step, high, from, to, about);
}
