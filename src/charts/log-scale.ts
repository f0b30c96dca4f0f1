import type { Scale } from './scale.ts';
import { multiples, placesOf, tickStep } from './ticks.ts';

/** More ticks than this crowd an axis. */
const mostTicks = 7;
/** Room at both ends, as a share of the axis. */
const margin = 0.04;
/** Room at both ends where all values are equal. */
const alone = 1.25;

/**
 * A logarithmic scale around values above zero: equal ratios are equally far apart. Ticks are powers of ten with their
 * double and fivefold; round steps where the values lie closer together than that, powers alone where they lie far apart.
 * Throws RangeError for values that a logarithm does not have.
 *
 * @param low the smallest value to be shown
 * @param high the largest
 * @param from where the axis starts in the drawing
 * @param to where it ends
 */
export function logScale(low: number, high: number, from: number, to: number): Scale {
  if (!(low > 0 && high >= low && Number.isFinite(high)))
    throw new RangeError(`no logarithmic scale from ${low} to ${high}`);
  const room = high > low ? (high / low) ** margin : alone;
  const [start, end] = [low / room, high * room];
  const decades = Math.log(end / start);
  return {
    low: start,
    high: end,
    ticks: ticksBetween(start, end),
    at: (value) => from + (Math.log(value / start) / decades) * (to - from),
  };
}

function ticksBetween(start: number, end: number): Scale['ticks'] {
  const rounds = roundNumbers([1, 2, 5], start, end);
  if (rounds.length < 3) {
    const step = tickStep(end - start, 4);
    return multiples(step, start, end).map((value) => ({ value, text: value.toFixed(placesOf(step)) }));
  }
  const powers = roundNumbers([1], start, end);
  const every = Math.ceil(powers.length / mostTicks);
  const shown = rounds.length <= mostTicks ? rounds : powers.filter((_, index) => index % every === 0);
  return shown.map((value) => ({ value, text: String(value) }));
}

/** Powers of ten times each of some numbers. */
function roundNumbers(times: readonly number[], start: number, end: number): readonly number[] {
  const found: number[] = [];
  for (let power = Math.floor(Math.log10(start)); power <= Math.ceil(Math.log10(end)); power += 1)
    found.push(...times.map((digit) => Number(`${digit}e${power}`)));
  return found.filter((value) => value >= start && value <= end);
}
