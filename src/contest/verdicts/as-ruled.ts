import type { FigureSet } from '../../figures/figure.ts';
import { isPresent } from '../../figures/figure.ts';
import type { Challenge, Fact } from '../../model/challenge.ts';
import type { Design } from '../../model/design.ts';
import type { Flight } from '../../model/entry.ts';
import type { RuledValue } from '../../model/ruling.ts';
import type { Contender } from '../contender.ts';
import { facts, factValue } from '../rules/facts.ts';
import { figureValues, isOfMotors } from '../rules/figure-values.ts';
import { figuresForLimits } from '../rules/figures-for-limits.ts';
import { setupOfFlight } from '../rules/setup-of-flight.ts';

/** The facts and figures that a challenge's eligibility, divisions, scale and tie-breaks name, each once. */
export function namedByRules(challenge: Challenge): {
  readonly facts: readonly Fact[];
  readonly figures: readonly string[];
} {
  const conditions = [
    ...challenge.eligibility,
    ...challenge.divisions.flatMap((division) => division.conditions),
  ];
  const named = new Set(
    conditions.flatMap((condition) => (condition.kind === 'fact' ? [condition.fact] : [])),
  );
  const figures = new Set(
    conditions.flatMap((condition) => (condition.kind === 'figure' ? [condition.figure] : [])),
  );
  if (challenge.scoring.scale !== null) figures.add(challenge.scoring.scale.by);
  for (const step of challenge.tieBreaks) if (step.kind === 'figure') figures.add(step.figure);
  return { facts: facts.filter((fact) => named.has(fact)), figures: [...figures] };
}

/**
 * What a ruling on this flight would write down now: the setup (`none` for the entry as first written), and each fact
 * and figure the rules name, figures in SI as the limits see them. An absent figure or fact is left out; a figure of
 * motors is a list.
 */
export function factsAsRuled(
  challenge: Challenge,
  contender: Contender,
  flight: Flight,
): Record<string, RuledValue> {
  const setup = setupOfFlight(contender.entry, flight);
  const figures = figuresForLimits(contender, flight, setup.id);
  const named = namedByRules(challenge);
  const written: Record<string, RuledValue> = { setup: setup.id ?? 'none' };
  for (const id of [...named.facts, ...named.figures]) {
    const value = valueAsRuled(id, setup.design, contender.junior, figures);
    if (value !== null) written[id] = value;
  }
  return written;
}

/** One fact or figure as a ruling writes it; null where it is absent, or where one of the motors lacks it. */
export function valueAsRuled(
  id: string,
  design: Design,
  junior: boolean,
  figures: FigureSet,
): RuledValue | null {
  const fact = facts.find((known) => known === id);
  if (fact !== undefined) return factValue(fact, design, junior);
  const present = figureValues(figures, id).filter(isPresent);
  const values = present.map(({ value }) => value);
  if (isOfMotors(figures, id)) return values.length === figures.motors.length ? values : null;
  return values[0] ?? null;
}
