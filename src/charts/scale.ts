import { multiples, placesOf, tickStep } from './ticks.ts';

/** A linear scale: which value lies where, with the ticks of its axis. */
export interface Scale {
  readonly low: number;
  readonly high: number;
  readonly ticks: readonly { readonly value: number; readonly text: string }[];
  readonly at: (value: number) => number;
}

/**
 * A scale from a start to the first tick at or beyond the largest value. Where nothing lies beyond the start there is
 * still a scale, one wide, so that a chart of equal values, or of none, has axes.
 *
 * @param start the value at which the axis begins
 * @param most the largest value to be shown
 * @param from where the start lies in the drawing
 * @param to where the end lies
 * @param about how many parts the axis should have
 */
export function linearScale(start: number, most: number, from: number, to: number, about: number): Scale {
  const span = Number.isFinite(most) && most > start ? most - start : 1;
  const step = tickStep(span, about);
  const high = Math.ceil((start + span) / step - 1e-12) * step;
  const places = placesOf(step);
  return {
    low: start,
    high,
    ticks: multiples(step, start, high).map((value) => ({ value, text: value.toFixed(places) })),
    at: (value) => from + ((value - start) / (high - start)) * (to - from),
  };
}

/**
 * The same scale with the ticks of another unit, so that one line can be read in both.
 *
 * @param per how many of that unit one of the scale's own is
 */
export function scaleInUnit(scale: Scale, per: number, about: number): Scale {
  const { low, high } = scale;
  const step = tickStep((high - low) * per, about);
  const places = placesOf(step);
  return {
    low: low * per,
    high: high * per,
    ticks: multiples(step, low * per, high * per).map((value) => ({ value, text: value.toFixed(places) })),
    at: (value) => scale.at(value / per),
  };
}
