import { roundDecimal } from '../quantities/decimal.ts';
import { formatMeasured, toUnit } from '../quantities/format.ts';
import type { Quantity } from '../quantities/quantity.ts';
import { findUnit, unitNamed } from '../quantities/units.ts';
import { lazyMeasure } from './lazy-measure.ts';
import { type InBoth, inBoth, type Measure, plainInBoth, timeText } from './measure.ts';
import { decimals, printed, raised, valueWithU, withBoth, withoutU, withUnit } from './number-text.ts';
import type { UnitPair } from './units-shown.ts';
import { magnitude, placesWritten, writtenIn } from './written.ts';

/**
 * What somebody measured, as text. A number keeps every digit that was written, however large its ±; a conversion into
 * the other system is rounded to what the written number holds.
 */
export function measureOfQuantity(quantity: Quantity, units: UnitPair): Measure {
  return lazyMeasure(
    units,
    (symbol) => withItsU(quantity, symbol),
    (symbol) => withoutItsU(quantity, symbol),
  );
}

function withItsU(quantity: Quantity, symbol: string): string {
  const { value, u, kind } = quantity;
  const places = placesWritten(quantity, symbol);
  if (places === null) return valueWithU(value, u, kind, symbol);
  const text = formatMeasured(value, u, kind, symbol);
  const kept =
    decimals(text.value) < places || text.u === '' ? asPlaced(quantity, symbol, places) : text.value;
  return withBoth(kept, text.u, printed(text.unit));
}

function withoutItsU(quantity: Quantity, symbol: string): string {
  const places = placesWritten(quantity, symbol);
  if (places === null) return converted(quantity, symbol);
  return withUnit(asPlaced(quantity, symbol, places), printed(unitNamed(quantity.kind, symbol).symbol));
}

function asPlaced({ value, kind }: Quantity, symbol: string, places: number): string {
  return toUnit(value, kind, symbol).toFixed(places);
}

/**
 * A value in a unit it was not written in, without its ±: to three digits, or to as many as were written, and never to
 * more than the ± holds.
 */
function converted(quantity: Quantity, symbol: string): string {
  const { value, u, kind } = quantity;
  const held = withoutU(value, u, kind, symbol);
  const number = toUnit(value, kind, symbol);
  const size = number === 0 ? 1 : Math.abs(number);
  const digits = Math.max(3, writtenIn(quantity)?.digits ?? 3);
  const places = Math.max(0, digits - 1 - Math.floor(Math.log10(size)));
  const rounded =
    decimals(held) <= places ? held : roundDecimal(number, `1e-${places}`, 'nearest').toFixed(places);
  return withUnit(rounded, printed(unitNamed(kind, symbol).symbol));
}

/**
 * A measured value as it was written in the system of its unit, "60 ft", and converted in the other, "18.3 m". What was
 * written in a unit that neither shows, such as km/h, stays so in the system it belongs to; where both show the same
 * unit, it has its conversion in brackets.
 */
export function asWritten(quantity: Quantity, units: UnitPair): InBoth {
  const text = magnitude(quantity);
  const plain = plainInBoth(measureOfQuantity(quantity, units));
  const shown =
    text === '' || [units.metric, units.imperial].some((unit) => placesWritten(quantity, unit) !== null);
  if (shown) return plain;
  const written = typed(text);
  if (units.metric === units.imperial)
    return inBoth((system) => (written === plain[system] ? written : `${written} (${plain[system]})`));
  return { ...plain, [isImperial(quantity) ? 'imperial' : 'metric']: written };
}

/** A text as it was typed, with the signs of print. */
function typed(text: string): string {
  return raised(text.replace(/(?<=\d) ?[x*] ?(?=\d)/gi, ' × ').replaceAll(' ', '\u00a0'));
}

/** Whether the last unit of a text belongs to feet, pounds and Fahrenheit. */
function isImperial(quantity: Quantity): boolean {
  const last = /[^\d.,/ ]\D*$/.exec(magnitude(quantity))?.[0] ?? '';
  const unit = findUnit(quantity.kind, last);
  return unit !== null && /\b(?:in|ft|yd|oz|ozf|lb|lbf|mph)|°F/.test(unit.symbol);
}

/** A reading of a watch as it was written, "1:35.60" or "95.60 s"; in seconds where nobody wrote one. */
export function watchText(reading: Quantity): string {
  const text = magnitude(reading);
  return text === '' ? timeText(reading.value) : typed(text);
}
