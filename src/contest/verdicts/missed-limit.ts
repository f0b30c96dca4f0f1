import type { PresentFigure } from '../../figures/figure.ts';
import type { Limit } from '../../model/challenge.ts';
import { significant } from '../../quantities/decimal.ts';
import { formatQuantity } from '../../quantities/format.ts';
import type { Kind } from '../../quantities/quantity.ts';
import { findUnit, siUnit } from '../../quantities/units.ts';
import { holds } from '../rules/limit.ts';
import { kindOf, nameOfFigure } from '../rules/name-of-figure.ts';

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

/** Such as "the span of 2.35 m is below the limit of at least 2.4 m". */
export function figureMissed(limit: Limit, figure: PresentFigure): string {
  return missedInWords(nameOfFigure(figure.id), limit, figure.value, kindOf(figure));
}

/** The sentence about a value that does not hold, in the unit the limit is written in. */
export function missedInWords(name: string, limit: Limit, value: number, kind: Kind): string {
  const side =
    limit.low !== null && value < limit.low.value
      ? 'below'
      : limit.high !== null && value > limit.high.value
        ? 'above'
        : 'at the very end left out by';
  return `the ${name} of ${shownValue(limit, value, kind)} is ${side} the limit of ${limit.written}`;
}

/** The value to four digits, or to as many as show that it does not hold. */
function shownValue(limit: Limit, value: number, kind: Kind): string {
  const symbol = unitOf(limit, kind);
  for (let digits = 4; digits < 12; digits++) {
    const rounded = significant(value, digits);
    if (!holds(limit, rounded)) return shown(rounded, kind, symbol);
  }
  return shown(significant(value), kind, symbol);
}

/** Turns go without their unit: the name of the figure says it already. */
function shown(value: number, kind: Kind, symbol: string): string {
  return kind === 'turns' ? String(value) : formatQuantity(value, kind, symbol);
}

function unitOf(limit: Limit, kind: Kind): string {
  const tail = /\d\s*([^\d\s].*)$/.exec(limit.written)?.[1] ?? '';
  return (findUnit(kind, tail) ?? siUnit(kind)).symbol;
}
