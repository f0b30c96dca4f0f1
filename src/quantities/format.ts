import { roundDecimal } from './decimal.ts';
import type { Kind } from './quantity.ts';
import { type Unit, unitNamed } from './units.ts';

/** An SI value in another unit of its kind, named by symbol or spelling. Throws RangeError for an unknown unit. */
export function toUnit(value: number, kind: Kind, symbol: string): number {
  return inUnit(value, unitNamed(kind, symbol));
}

/** An SI value in a unit of its kind. */
export function inUnit(value: number, unit: Unit): number {
  return unit.decimalShift === null
    ? (value - (unit.offset ?? 0)) / unit.factor
    : shifted(value, -unit.decimalShift);
}

/** A standard uncertainty: a difference, which no offset touches. */
function differenceInUnit(value: number, unit: Unit): number {
  return unit.decimalShift === null ? value / unit.factor : shifted(value, -unit.decimalShift);
}

/** × 10^power as decimals, so that 3.2 m is 3200 mm without a last bit. */
function shifted(value: number, power: number): number {
  if (power === 0) return value;
  const text = String(value);
  const end = text.indexOf('e');
  if (end === -1) return Number(`${text}e${power}`);
  return Number(`${text.slice(0, end)}e${Number(text.slice(end + 1)) + power}`);
}

/** Throws RangeError for what is not finite. */
export function demandFinite(value: number): void {
  if (!Number.isFinite(value)) throw new RangeError(`${value} cannot be written as a quantity`);
}

/**
 * Value and standard uncertainty (both SI) for showing in a unit: u to two significant digits, the value to the same
 * decimal place. With u = 0 the value comes with up to 12 significant digits and u is empty. Throws RangeError for an
 * unknown unit or what is not finite.
 */
export function formatMeasured(
  value: number,
  u: number,
  kind: Kind,
  symbol: string,
): { readonly value: string; readonly u: string; readonly unit: string } {
  demandFinite(value);
  demandFinite(u);
  const unit = unitNamed(kind, symbol);
  const shownUnit = unit.symbol === '1' ? '' : unit.symbol;
  const inside = inUnit(value, unit);
  const spread = Math.abs(differenceInUnit(u, unit));
  if (spread === 0) return { value: String(Number(inside.toPrecision(12)) + 0), u: '', unit: shownUnit };
  const rounded = spread.toExponential(1);
  const exponent = Number(rounded.slice(rounded.indexOf('e') + 1));
  return { value: toPlace(inside, 1 - exponent), u: toPlace(spread, 1 - exponent), unit: shownUnit };
}

/** Rounded to so many decimal places, or to tens and hundreds where there are fewer than none. */
function toPlace(value: number, places: number): string {
  if (places < 0) return String(roundDecimal(value, `1e${-places}`, 'nearest'));
  const text = value.toFixed(Math.min(places, 100));
  return Number(text) === 0 ? text.replace('-', '') : text;
}

/** Seconds with as many decimals as a resolution such as `0.1` has: `41.7 s`. */
export function formatSeconds(seconds: number, resolution: string): string {
  const places = resolution.split('.')[1]?.length ?? 0;
  return `${toPlace(roundDecimal(seconds, `1e-${places}`, 'nearest'), places)} s`;
}
