import { type FigureSet, isPresent } from '../../figures/figure.ts';
import type { Challenge } from '../../model/challenge.ts';
import { figureUnmet } from './condition.ts';
import { figureValues } from './figure-values.ts';

/** Why limits on figures cannot be checked yet, such as "the flying mass cannot be checked: needs …", in the order of the rules. */
export function limitsUnchecked(
  { eligibility }: Pick<Challenge, 'eligibility'>,
  figures: FigureSet,
): string[] {
  return eligibility.flatMap((condition) => {
    if (condition.kind !== 'figure') return [];
    const values = figureValues(figures, condition.figure);
    if (values.length > 0 && values.every(isPresent)) return [];
    return figureUnmet(condition.figure, condition.limit, figures, false) ?? [];
  });
}
