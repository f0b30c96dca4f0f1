import type { PresentFigure } from '../figures/figure.ts';
import { figureDefinition } from '../figures/registry.ts';
import { kindOfFigure, kindOfUnit } from '../figures/unit-kind.ts';
import { roundDecimal, significant } from '../quantities/decimal.ts';
import { formatMeasured, formatSeconds, toUnit } from '../quantities/format.ts';
import { formatQuantity } from '../quantities/format-quantity.ts';
import type { Kind } from '../quantities/quantity.ts';
import { lazyMeasure } from './lazy-measure.ts';
import { decimals, printed, valueWithoutU, valueWithU, withUnit } from './number-text.ts';
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

export type System = 'metric' | 'imperial';

/** A text in both systems, as components/Both.astro shows it. */
export interface InBoth {
  readonly metric: string;
  readonly imperial: string;
}

/** A text in both systems, written by one function. */
export function inBoth(write: (system: System) => string): InBoth {
  return { metric: write('metric'), imperial: write('imperial') };
}

/** A measure without its ±, in both systems. */
export function plainInBoth(measure: Measure): InBoth {
  return { metric: measure.metricPlain, imperial: measure.imperialPlain };
}

/** A value in SI with its standard uncertainty, as text with a unit. */
export function measureOf(value: number, u: number, kind: Kind, units: UnitPair): Measure {
  return lazyMeasure(
    units,
    (symbol) => valueWithU(value, u, kind, symbol),
    (symbol) => valueWithoutU(value, u, kind, symbol),
  );
}

/** Digits of a figure without uncertainty: a share of two areas of one curve is no better known than its readings. */
const digitsWithoutU = 3;

/** A figure as text, in the units its kind is shown in. */
export function measureOfFigure(figure: PresentFigure): Measure {
  const { kind, units } = shownAs(figure);
  const value = figure.u === 0 ? significant(figure.value, digitsWithoutU) : figure.value;
  return measureOf(value, figure.u, kind, units);
}

/** A time of the rules, such as "40 s". */
export function timeText(seconds: number): string {
  return formatQuantity(seconds, 'time', 's').replace(' ', '\u00a0');
}

/**
 * An official time or a score, with as many decimals as its resolution has, such as "41.7 s"; a ruled time that was
 * written more finely keeps what was written.
 */
export function secondsAt(seconds: number, resolution: string): string {
  const written = timeText(seconds);
  const atResolution = formatSeconds(seconds, resolution).replace(' ', '\u00a0');
  return written.length > atResolution.length ? written : atResolution;
}

/** Seconds with their ±, such as "41.70 ± 0.11 s". */
export function secondsText(seconds: number, u: number): string {
  return valueWithU(seconds, u, 'time', unitPairs.time.metric);
}

/** So many decimals does a figure hold where it stands without its ±. */
export function placesOf(figure: PresentFigure, system: System): number {
  const { kind, units } = shownAs(figure);
  return decimals(formatMeasured(figure.value, 10 * figure.u, kind, units[system]).value);
}

/** A figure without its ±, to so many decimals, and to fewer where it does not hold as many. */
export function figureAt(figure: PresentFigure, system: System, places: number): string {
  const { kind, units } = shownAs(figure);
  const held = formatMeasured(figure.value, 10 * figure.u, kind, units[system]);
  const rounded =
    decimals(held.value) <= places
      ? held.value
      : roundDecimal(toUnit(figure.value, kind, units[system]), `1e-${places}`, 'nearest').toFixed(places);
  return withUnit(rounded, printed(held.unit));
}

function shownAs(figure: PresentFigure): { kind: Kind; units: UnitPair } {
  const definition = figureDefinition(figure.id);
  const kind = definition === undefined ? kindOfUnit(figure.unit) : kindOfFigure(definition);
  return { kind, units: unitsOfFigure(figure.id, kind) };
}

/** A value in one system, without its ±. */
export function plainIn(measure: Measure, system: System): string {
  return system === 'metric' ? measure.metricPlain : measure.imperialPlain;
}

/** A value in one system, with its ±. */
export function withUIn(measure: Measure, system: System): string {
  return measure[system];
}
