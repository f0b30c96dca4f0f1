import { type FigureSet, isPresent } from '../../figures/figure.ts';
import type { Challenge } from '../../model/challenge.ts';
import type { RuledValue } from '../../model/ruling.ts';
import { figureValues } from '../rules/figure-values.ts';
import { holds } from '../rules/limit.ts';
import { limitsOn } from '../rules/limits-on.ts';
import { allowedUncertainty, missedBy } from './missed-limit.ts';

/**
 * True where every limit and division says the same of a figure as it is now as of the value that was ruled on, with
 * the tolerance of an acceptance: a value that misses by less than twice its uncertainty counts as holding too.
 */
export function sameAnswers(
  challenge: Challenge,
  id: string,
  ruled: RuledValue,
  figures: FigureSet,
): boolean {
  const now = figureValues(figures, id).filter(isPresent);
  const before = [ruled].flat().filter((value) => typeof value === 'number');
  return limitsOn(challenge, id).every((limit) =>
    now.every(({ value, u, basis }, index) => {
      const then = before[index];
      if (then === undefined) return false;
      if (holds(limit, then) === holds(limit, value)) return true;
      const missed = holds(limit, then) ? value : then;
      return missedBy(limit, missed) < 2 * allowedUncertainty(value, u, basis === 'inspected');
    }),
  );
}
