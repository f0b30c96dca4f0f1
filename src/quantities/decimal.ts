/**
 * An exact number: a fraction of two whole numbers, the denominator positive. Times are summed, averaged, rounded and
 * compared as these, so that a mean of 41.62 and 41.80 is 41.71 and nothing else.
 */
export interface Exact {
  readonly numerator: bigint;
  readonly denominator: bigint;
}

export type Rounding = 'down' | 'nearest';

const decimal = /^([+-]?\d*)(?:\.(\d+))?(?:e([+-]?\d{1,3}))?$/i;

/**
 * A decimal as an exact number. A text is taken as it stands; a number as the decimal it prints as to 15 significant
 * digits, which takes away what binary arithmetic added: 0.1 + 0.2 is 0.3. Throws RangeError for anything else.
 */
export function exactly(value: number | string): Exact {
  const text = typeof value === 'string' ? value.trim() : String(Number(value.toPrecision(15)));
  const match = decimal.exec(text);
  if (match === null || !/\d/.test(text)) throw new RangeError(`"${text}" is not a decimal number`);
  const [, whole = '', places = '', power = '0'] = match;
  const digits = BigInt(`${whole.replace('+', '')}${places}`.replace(/^-?$/, '0'));
  const shift = Number(power) - places.length;
  return shift >= 0
    ? { numerator: digits * 10n ** BigInt(shift), denominator: 1n }
    : { numerator: digits, denominator: 10n ** BigInt(-shift) };
}

function asExact(value: number | string | Exact): Exact {
  return typeof value === 'object' ? value : exactly(value);
}

/** The exact sum; 0 of none. */
export function sumDecimal(values: readonly (number | string | Exact)[]): Exact {
  return values.map(asExact).reduce(
    (sum, one) => ({
      numerator: sum.numerator * one.denominator + one.numerator * sum.denominator,
      denominator: sum.denominator * one.denominator,
    }),
    { numerator: 0n, denominator: 1n },
  );
}

/** The exact mean. Throws RangeError for none. */
export function meanDecimal(values: readonly (number | string | Exact)[]): Exact {
  if (values.length === 0) throw new RangeError('no mean of no values');
  const { numerator, denominator } = sumDecimal(values);
  return { numerator, denominator: denominator * BigInt(values.length) };
}

/** Negative, 0 or positive as the first is smaller, equal or larger. */
export function compareDecimal(first: number | string | Exact, second: number | string | Exact): number {
  const [left, right] = [asExact(first), asExact(second)];
  const difference = left.numerator * right.denominator - right.numerator * left.denominator;
  return difference < 0n ? -1 : difference > 0n ? 1 : 0;
}

/**
 * Rounds to a multiple of a resolution such as `0.1`: down (towards minus infinity), or to the nearest with a
 * half going up. The result is the number nearest to the exact decimal. Throws RangeError where
 * the resolution is not above zero.
 */
export function roundDecimal(value: number | string | Exact, resolution: string, rounding: Rounding): number {
  const exact = asExact(value);
  const step = exactly(resolution);
  if (step.numerator <= 0n) throw new RangeError(`a resolution of ${resolution} is not above zero`);
  const over = exact.numerator * step.denominator;
  const under = exact.denominator * step.numerator;
  const steps = rounding === 'down' ? floorDivide(over, under) : floorDivide(2n * over + under, 2n * under);
  return toNumber({ numerator: steps * step.numerator, denominator: step.denominator });
}

function floorDivide(over: bigint, under: bigint): bigint {
  const quotient = over / under;
  return over % under < 0n ? quotient - 1n : quotient;
}

/** The number nearest to an exact one whose denominator is a power of ten; others to 17 significant digits or better. */
export function toNumber(value: Exact): number {
  const { numerator, denominator } = value;
  const power = String(denominator).length - 1;
  if (denominator === 10n ** BigInt(power)) return Number(`${numerator}e-${power}`) + 0;
  const size = numerator < 0n ? -numerator : numerator;
  const places = Math.max(0, 25 + String(denominator).length - String(size).length);
  return Number(`${(numerator * 10n ** BigInt(places)) / denominator}e-${places}`) + 0;
}

/** A number to so many significant digits, 12 as the data files write them. */
export function significant(value: number, digits = 12): number {
  return Number(value.toPrecision(digits)) + 0;
}
