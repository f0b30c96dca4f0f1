import type { PresentFigure } from '../figures/figure.ts';
import { figureDefinition } from '../figures/registry.ts';
import { kindOfFigure, kindOfUnit } from '../figures/unit-kind.ts';
import { significant } from '../quantities/decimal.ts';
import { formatMeasured, toUnit } from '../quantities/format.ts';
import type { Kind, Quantity } from '../quantities/quantity.ts';
import { type UnitPair, unitPairs, unitsOfFigure } from './units-shown.ts';

/** One value as text in both systems; the same text twice where both use the same unit. */
export interface Measure {
  /** With its ±. */
  readonly metric: string;
  readonly imperial: string;
  /** Without the ±, to the place of its first digit. */
  readonly metricPlain: string;
  readonly imperialPlain: string;
}

type System = 'metric' | 'imperial';

/** A value in SI with its standard uncertainty, as text with a unit. */
export function measureOf(value: number, u: number, kind: Kind, units: UnitPair): Measure {
  const metric = inUnit(value, u, kind, units.metric);
  const imperial = units.imperial === units.metric ? metric : inUnit(value, u, kind, units.imperial);
  return {
    metric: metric.full,
    imperial: imperial.full,
    metricPlain: metric.plain,
    imperialPlain: imperial.plain,
  };
}

/** What a builder measured, as text. */
export function measureOfQuantity(quantity: Quantity, units: UnitPair): Measure {
  return measureOf(quantity.value, quantity.u, quantity.kind, units);
}

/** A figure as text, in the units its kind is shown in. */
export function measureOfFigure(figure: PresentFigure): Measure {
  const definition = figureDefinition(figure.id);
  const kind = definition === undefined ? kindOfUnit(figure.unit) : kindOfFigure(definition);
  return measureOf(figure.value, figure.u, kind, unitsOfFigure(figure.id, kind));
}

/** Seconds with their ±, such as "41.70 ± 0.11 s". */
export function secondsText(seconds: number, u: number): string {
  return inUnit(seconds, u, 'time', unitPairs.time.metric).full;
}

/** The value in the system a visitor of this site sees first, without its ±. */
export function firstPlain(measure: Measure, system: System): string {
  return system === 'metric' ? measure.metricPlain : measure.imperialPlain;
}

function inUnit(value: number, u: number, kind: Kind, symbol: string): { full: string; plain: string } {
  const text = formatMeasured(value, u, kind, symbol);
  const unit = printed(text.unit);
  if (text.u === '') return { full: withUnit(text.value, unit), plain: withUnit(text.value, unit) };
  const full =
    unit === '°'
      ? `${withUnit(text.value, unit)} ± ${withUnit(text.u, unit)}`
      : withUnit(`${text.value} ± ${text.u}`, unit);
  return { full, plain: withUnit(withoutU(value, u, kind, symbol), unit) };
}

/**
 * A number that stands without its ±: to the place of the first digit of u, so that it promises no more than it
 * holds; a shorter number, such as a round one that somebody wrote, stays as it is.
 */
function withoutU(value: number, u: number, kind: Kind, symbol: string): string {
  const rounded = formatMeasured(value, 10 * u, kind, symbol).value;
  const short = String(significant(toUnit(value, kind, symbol)));
  return short.length <= rounded.length ? short : rounded;
}

/** A unit as it is printed: powers raised, nothing for a pure number. */
function printed(symbol: string): string {
  if (symbol === '1') return '';
  return symbol.replace(/(?<=[a-z])2/g, '²').replace(/(?<=[a-z])3/g, '³');
}

/** A space that does not break parts number and unit; a degree sign stands close. */
function withUnit(number: string, unit: string): string {
  if (unit === '') return number;
  return unit === '°' ? `${number}°` : `${number}\u00a0${unit}`;
}
