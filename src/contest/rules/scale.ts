import { type FigureSet, isPresent } from '../../figures/figure.ts';
import type { Scoring } from '../../model/challenge.ts';
import { figureValues } from './figure-values.ts';
import { nameOfFigure } from './name-of-figure.ts';

/**
 * The handicap factor (figure / reference)^power of an aircraft, 1 where the rules have none or score by rounds; where
 * it cannot be worked out, the reason instead, fit for a public page. A figure of motors scales only where it is one
 * and the same for all of them.
 */
export function scaleFactor(
  { scale, method }: Pick<Scoring, 'scale' | 'method'>,
  figures: FigureSet,
): number | string {
  if (scale === null || method === 'rounds') return 1;
  const name = nameOfFigure(scale.by);
  const values = figureValues(figures, scale.by);
  const [first] = values;
  if (first === undefined) return `cannot be scaled: the ${name} is not known`;
  for (const figure of values) {
    if (!isPresent(figure)) return `cannot be scaled by the ${name}: ${figure.absent}`;
    if (figure.value !== (first as typeof figure).value)
      return `cannot be scaled: the ${name} differs between the motors`;
  }
  const factor = isPresent(first) ? (first.value / scale.reference) ** scale.power : Number.NaN;
  return Number.isFinite(factor) ? factor : `cannot be scaled: the ${name} gives no factor`;
}
