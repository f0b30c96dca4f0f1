import type { PresentFigure } from '../../figures/figure.ts';
import type { Limit } from '../../model/challenge.ts';
import { significant } from '../../quantities/decimal.ts';
import { formatMeasured, toUnit } from '../../quantities/format.ts';
import type { Kind } from '../../quantities/quantity.ts';
import { holds } from '../rules/limit.ts';
import { kindOf, nameOfFigure } from '../rules/name-of-figure.ts';
import { unitOfLimit } from '../rules/unit-of-limit.ts';

/** How far a builder's own uncertainty may be stretched: a share of the value. */
const builderCap = 0.01;

/** By how much a value lies outside a limit, SI; 0 where it is inside or exactly at an end. */
export function missedBy(limit: Limit, value: number): number {
  return Math.max(0, (limit.low?.value ?? value) - value, value - (limit.high?.value ?? value));
}

/**
 * The standard uncertainty an organiser may allow for when accepting a measured value just outside a limit: that of an
 * inspected value, or the builder's own, capped at 1 % so that a wide guess opens no door.
 */
export function allowedUncertainty(value: number, u: number, inspected: boolean): number {
  return inspected ? u : Math.min(u, builderCap * Math.abs(value));
}

/** True where a value misses a limit, but by less than twice the uncertainty: an acceptance settles that. */
export function narrowlyMissed(limit: Limit, value: number, u: number, inspected: boolean): boolean {
  return !holds(limit, value) && missedBy(limit, value) < 2 * allowedUncertainty(value, u, inspected);
}

/** Such as "the span of 2.35 m is below the limit of at least 2.4 m"; or that it is inside the measuring error. */
export function figureMissed(limit: Limit, figure: PresentFigure): string {
  const { id, value, u, basis } = figure;
  return missed(nameOfFigure(id), limit, { value, u, inspected: basis === 'inspected' }, kindOf(figure));
}

/** Why a measured value does not hold: it misses its limit, or misses it by less than measuring can tell. */
export function missed(
  name: string,
  limit: Limit,
  { value, u, inspected }: { readonly value: number; readonly u: number; readonly inspected: boolean },
  kind: Kind,
): string {
  return narrowlyMissed(limit, value, u, inspected)
    ? insideError(name, limit, value, allowedUncertainty(value, u, inspected), kind)
    : missedInWords(name, limit, value, kind);
}

/**
 * The sentence about a value that misses its limit by less than measuring can tell, such as "the span of 2.3960 m ±
 * 0.0050 m against at least 2.4 m is inside the measuring error: the ruling decides".
 */
function insideError(name: string, limit: Limit, value: number, u: number, kind: Kind): string {
  const {
    value: shownValue,
    u: shownU,
    unit,
  } = formatMeasured(value, u, kind, unitOfLimit(limit, kind).symbol);
  const behind = unit === '' || kind === 'turns' ? '' : unit === '°' ? unit : ` ${unit}`;
  return `the ${name} of ${shownValue}${behind} ± ${shownU}${behind} against ${limit.written} is inside the measuring error: the ruling decides`;
}

/** The sentence about a value that does not hold, in the unit the limit is written in. */
function missedInWords(name: string, limit: Limit, value: number, kind: Kind): string {
  const side =
    limit.low !== null && value < limit.low.value
      ? 'below'
      : limit.high !== null && value > limit.high.value
        ? 'above'
        : 'at the very end left out by';
  return `the ${name} of ${shownValue(limit, value, kind)} is ${side} the limit of ${limit.written}`;
}

/** The value in the unit of the limit, to four digits or to as many as show that it does not hold. */
function shownValue(limit: Limit, value: number, kind: Kind): string {
  const unit = unitOfLimit(limit, kind);
  const inside = toUnit(value, kind, unit.symbol);
  for (let digits = 4; digits < 12; digits++) {
    const rounded = significant(inside, digits);
    if (!holds(limit, rounded * unit.factor + (unit.offset ?? 0))) return shown(rounded, kind, unit.symbol);
  }
  return shown(significant(inside), kind, unit.symbol);
}

/** Turns go without their unit: the name of the figure says it already. */
function shown(inside: number, kind: Kind, symbol: string): string {
  if (kind === 'turns' || symbol === '1') return String(inside);
  return symbol === '°' ? `${inside}°` : `${inside} ${symbol}`;
}
