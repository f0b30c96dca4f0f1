import type { Quantity } from '../quantities/quantity.ts';
import { plainTypography } from '../quantities/typography.ts';
import { findUnit, type Unit, unitNamed } from '../quantities/units.ts';

/** A quantity as a person wrote it: one number and its unit. */
export interface Written {
  /** Value and unit without the ±, as they were typed. */
  readonly text: string;
  readonly unit: Unit;
  /** Digits behind the point. */
  readonly places: number;
  /** Digits in all, zeros in front apart. */
  readonly digits: number;
}

const oneNumber = /^([-+]?\d*(?:[.,]\d+)?) ?(\D*[23]?)$/;

/**
 * What somebody wrote, where it is one decimal number with a unit; null for a number that nobody wrote, and for a
 * fraction, a compound such as "5 ft 9 in", minutes and seconds, or turns of a crank.
 */
export function writtenIn(quantity: Quantity): Written | null {
  const text = magnitude(quantity);
  const match = oneNumber.exec(text);
  if (text === '' || match === null) return null;
  const [, number = '', symbol = ''] = match;
  const unit = findUnit(quantity.kind, symbol);
  if (unit === null || !/\d/.test(number)) return null;
  return {
    text,
    unit,
    places: number.split(/[.,]/)[1]?.length ?? 0,
    digits: number.replace(/\D/g, '').replace(/^0+/, '').length,
  };
}

/** The written text without its ±, such as "5 ft 9 in"; empty for a number that nobody wrote. */
export function magnitude(quantity: Quantity): string {
  const [front = '', back] = plainTypography(quantity.written).split('±');
  const value = front.trim();
  // In "3.20 ± 0.01 m" the unit stands at the end, for both.
  const shared =
    back === undefined || /[^\d.,/ +-]/.test(value) ? '' : (/[^\d.,/ ].*$/.exec(back)?.[0] ?? '');
  return shared === '' ? value : `${value} ${shared}`;
}

/**
 * How many decimals a written value has in a unit: those written, or as many more or fewer as the point moves. Null
 * where nothing was written, or where the way to that unit is no shift of the point: the value is then a conversion.
 */
export function placesWritten(quantity: Quantity, symbol: string): number | null {
  const written = writtenIn(quantity);
  if (written === null) return null;
  const shown = unitNamed(quantity.kind, symbol);
  if (written.unit === shown) return written.places;
  if (written.unit.offset !== undefined || shown.offset !== undefined) return null;
  const shift = Math.log10(shown.factor / written.unit.factor);
  return Math.abs(shift - Math.round(shift)) < 1e-9 ? Math.max(0, written.places + Math.round(shift)) : null;
}
