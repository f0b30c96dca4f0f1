import { isPresent } from '../../figures/figure.ts';
import type { Challenge, Condition, Division } from '../../model/challenge.ts';
import type { RuledValue } from '../../model/ruling.ts';
import { type Tested, unmet } from '../rules/condition.ts';
import { figureValues } from '../rules/figure-values.ts';
import { holds } from '../rules/limit.ts';
import { allowedUncertainty, missedBy } from '../verdicts/missed-limit.ts';

/** The divisions whose every condition an aircraft meets, by id, in the challenge's order. */
export function divisionsMet(
  challenge: Challenge,
  tested: Tested,
  settled: Readonly<Record<string, RuledValue>> | null = null,
): readonly string[] {
  return challenge.divisions.filter((division) => meets(division, tested, settled)).map(({ id }) => id);
}

/**
 * True where an aircraft belongs to a division. `settled` is what an accepting ruling that still fits was based on: a
 * figure within twice its uncertainty of the division's limit stays on the side on which it was when it was ruled on, so
 * that an inspection does not move an accepted flight for the width of a ruler's error.
 */
function meets(
  { conditions }: Division,
  tested: Tested,
  settled: Readonly<Record<string, RuledValue>> | null,
): boolean {
  return conditions.every(
    (condition) => asSettled(condition, tested, settled) ?? unmet(condition, tested, false) === null,
  );
}

/** What the ruling settled about a condition; null where it settled nothing. */
function asSettled(
  condition: Condition,
  { figures }: Tested,
  settled: Readonly<Record<string, RuledValue>> | null,
): boolean | null {
  if (condition.kind === 'fact') return null;
  const ruled = settled?.[condition.figure];
  const [now, ...others] = figureValues(figures, condition.figure);
  if (typeof ruled !== 'number' || now === undefined || !isPresent(now) || others.length > 0) return null;
  const then = holds(condition.limit, ruled);
  if (then === holds(condition.limit, now.value)) return then;
  const missed = missedBy(condition.limit, then ? now.value : ruled);
  return missed < 2 * allowedUncertainty(now.value, now.u, now.basis === 'inspected') ? then : null;
}
