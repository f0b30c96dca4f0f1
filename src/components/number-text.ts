import { significant } from '../quantities/decimal.ts';
import { formatMeasured, toUnit } from '../quantities/format.ts';
import type { Kind } from '../quantities/quantity.ts';

/** A value in SI in a unit, with its ± where it has one. */
export function valueWithU(value: number, u: number, kind: Kind, symbol: string): string {
  const text = formatMeasured(value, u, kind, symbol);
  return withBoth(text.value, text.u, printed(text.unit));
}

/** The same without its ±. */
export function valueWithoutU(value: number, u: number, kind: Kind, symbol: string): string {
  const { value: exact, unit } = formatMeasured(value, 0, kind, symbol);
  return withUnit(u === 0 ? exact : withoutU(value, u, kind, symbol), printed(unit));
}

/** A value and its ± with the unit behind both; a degree sign stands behind each. */
export function withBoth(value: string, u: string, unit: string): string {
  if (u === '') return withUnit(value, unit);
  return unit === '°' ? `${withUnit(value, unit)} ± ${withUnit(u, unit)}` : withUnit(`${value} ± ${u}`, unit);
}

/**
 * A number that stands without its ±: to the place of the first digit of u, so that it promises no more than it
 * holds; a shorter number, such as a round one that somebody wrote, stays as it is.
 */
export function withoutU(value: number, u: number, kind: Kind, symbol: string): string {
  const rounded = formatMeasured(value, 10 * u, kind, symbol).value;
  const short = String(significant(toUnit(value, kind, symbol)));
  return short.length <= rounded.length ? short : rounded;
}

/** A unit as it is printed: powers raised, nothing for a pure number. */
export function printed(symbol: string): string {
  return symbol === '1' ? '' : raised(symbol);
}

/** A text with the powers of its units raised: "6.5 g/dm2" becomes "6.5 g/dm²". */
export function raised(text: string): string {
  return text.replace(/(?<=[a-z])2/g, '²').replace(/(?<=[a-z])3/g, '³');
}

/** A sentence with the powers of units raised where they stand behind a number, and nothing else touched. */
export function raisedInText(text: string): string {
  return text.replace(/(?<=\d (?:[a-z]+\/)?(?:mm|cm|dm|m|in|ft))[23]\b/g, (power) =>
    power === '2' ? '²' : '³',
  );
}

/** A space that does not break parts number and unit; a degree sign stands close. */
export function withUnit(number: string, unit: string): string {
  if (unit === '') return number;
  return unit === '°' ? `${number}°` : `${number}\u00a0${unit}`;
}

/** Digits behind the point of a number as text. */
export function decimals(number: string): number {
  return number.split('.')[1]?.length ?? 0;
}
