import type { PresentFigure } from './figure.ts';
import { equals, type Formula } from './formula.ts';
import { Given, shown } from './given.ts';
import { figureDefinition } from './registry.ts';
import { kindOfFigure } from './unit-kind.ts';

/** What comes out has one digit less than the figures among its terms, so that it agrees with what they give. */
const digitsOfResult = 3;
/** Measured numbers are shown in full. */
const digitsOfMeasuredAlone = 4;

/**
 * A figure's formula with its numbers put in and what comes out, such as 612 g + 31 g = 643 g; null for one whose numbers
 * are not simply put together.
 */
export function substituted(figure: PresentFigure): Formula | null {
  const definition = figureDefinition(figure.id);
  if (definition?.substitution === undefined || figure.worked.length === 0) return null;
  const { units, of } = definition.substitution;
  const left = of(new Given(figure.worked));
  if (left === null) return null;
  const kind = kindOfFigure(definition);
  const digits = figure.worked.some((term) => term.from === 'figure')
    ? digitsOfResult
    : digitsOfMeasuredAlone;
  return equals(left, ...units.map((unit) => shown(figure.value, kind, unit, digits)));
}
