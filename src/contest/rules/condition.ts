import type { FigureSet } from '../../figures/figure.ts';
import { isPresent } from '../../figures/figure.ts';
import type { Condition, Fact, Limit } from '../../model/challenge.ts';
import type { Design } from '../../model/design.ts';
import { figureMissed, narrowlyMissed } from '../verdicts/missed-limit.ts';
import { factValue } from './facts.ts';
import { figureValues } from './figure-values.ts';
import { holds } from './limit.ts';
import { nameOfFigure } from './name-of-figure.ts';

/** What conditions are tested against: one aircraft in one setup. */
export interface Tested {
  readonly design: Design;
  readonly junior: boolean;
  readonly figures: FigureSet;
}

/**
 * Why a condition does not hold, fit for a public page; null where it does. `settled` says that an accepting ruling
 * stands behind it: then a measured figure that misses its limit by less than twice its uncertainty is let pass.
 */
export function unmet(condition: Condition, tested: Tested, settled: boolean): string | null {
  return condition.kind === 'fact'
    ? factUnmet(condition.fact, condition.allowed, tested)
    : figureUnmet(condition.figure, condition.limit, tested.figures, settled);
}

function factUnmet(fact: Fact, allowed: readonly string[], { design, junior }: Tested): string | null {
  const value = factValue(fact, design, junior);
  const list = allowed.length === 0 ? 'nothing' : allowed.join(', ');
  if (value === null) return `cannot be checked: needs the ${fact} stated (${list})`;
  if (typeof value === 'boolean') {
    if (allowed.includes(String(value))) return null;
    return value ? 'not open to juniors' : 'open to juniors only';
  }
  if (typeof value === 'string') {
    return allowed.includes(value) ? null : `the ${fact} is ${value}; allowed is ${allowed.join(' or ')}`;
  }
  const forbidden = value.filter((item) => !allowed.includes(item));
  return forbidden.length === 0 ? null : `${forbidden.join(', ')} on board; allowed on board is ${list}`;
}

/** Why a limit on a figure does not hold; one on a figure of motors must hold for every motor. */
export function figureUnmet(id: string, limit: Limit, figures: FigureSet, settled: boolean): string | null {
  const values = figureValues(figures, id);
  if (values.length === 0) return `the ${nameOfFigure(id)} cannot be checked: it is not known`;
  for (const figure of values) {
    if (!isPresent(figure)) return `the ${nameOfFigure(id)} cannot be checked: ${figure.absent}`;
    if (holds(limit, figure.value)) continue;
    if (settled && narrowlyMissed(limit, figure.value, figure.u, figure.basis === 'inspected')) continue;
    return figureMissed(limit, figure);
  }
  return null;
}
