/** A reading with its standard uncertainty. */
interface Reading {
  readonly value: number;
  readonly u: number;
}

/** One test glide, taken as a quotient of two readings: distance over height, height over time, distance over time. */
export interface Throw {
  readonly over: Reading;
  readonly under: Reading;
}

/**
 * A few throws are never surer than this share of their mean, one throw never surer than the other: throwing 10 % too fast
 * or half a metre of wind per second does that much. Common practice, no source.
 */
const surest = 0.15;
const surestOfOne = 0.2;

export interface MeanOfThrows {
  readonly mean: number;
  /** Standard uncertainty that comes from the readings, JCGM 100:2008, 5.1.2, each reading by itself. */
  readonly ofReadings: number;
  /** What the throws' scatter s/√n, or the least doubt there must be, adds to it in quadrature. */
  readonly beyondReadings: number;
}

/**
 * Mean of the quotients of test glides with its uncertainty: the readings', with two or more throws also the scatter s/√n
 * in quadrature, and never less than 15 % (20 % for a single throw). Null without throws. Valid for glides from 3 m or more
 * in nearly still air, best in opposite directions.
 */
export function meanOfThrows(throws: readonly Throw[]): MeanOfThrows | null {
  const n = throws.length;
  if (n === 0) return null;
  const quotients = throws.map(({ over, under }) => over.value / under.value);
  const mean = quotients.reduce((sum, quotient) => sum + quotient, 0) / n;
  const ofReadings =
    Math.hypot(
      ...throws.map(
        ({ over, under }, index) =>
          quotients[index]! * Math.hypot(over.u / over.value, under.u / under.value),
      ),
    ) / n;
  const squares = quotients.reduce((sum, quotient) => sum + (quotient - mean) ** 2, 0);
  const scatter = n === 1 ? 0 : Math.sqrt(squares / (n - 1) / n);
  const least = (n === 1 ? surestOfOne : surest) * Math.abs(mean);
  const beyondReadings = Math.max(scatter, Math.sqrt(Math.max(0, least ** 2 - ofReadings ** 2)));
  return { mean, ofReadings, beyondReadings };
}
