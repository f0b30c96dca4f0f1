import type { PresentFigure } from '../figures/figure.ts';
import { figureDefinition } from '../figures/registry.ts';
import { kindOfFigure, kindOfUnit } from '../figures/unit-kind.ts';
import { formatMeasured } from '../quantities/format.ts';
import type { Kind, Quantity } from '../quantities/quantity.ts';
import { type UnitPair, unitPairs, unitsOfFigure } from './units-shown.ts';

/** One value as text in both systems; the same text twice where both use the same unit. */
export interface Measure {
  /** With its ±. */
  readonly metric: string;
  readonly imperial: string;
  /** To the same decimal place, without the ±. */
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
  const plain = withUnit(text.value, unit);
  return { plain, full: text.u === '' ? plain : withUnit(`${text.value} ± ${text.u}`, unit) };
}

/** A unit as it is printed: powers raised, nothing for a pure number. */
function printed(symbol: string): string {
  if (symbol === '1') return '';
  return symbol.replace(/(?<=[a-z])2/g, '²').replace(/(?<=[a-z])3/g, '³');
}

/** A space that does not break parts number and unit; a degree sign stands close to a lone number. */
function withUnit(number: string, unit: string): string {
  if (unit === '') return number;
  return unit === '°' && !number.includes('±') ? `${number}°` : `${number}\u00a0${unit}`;
}
