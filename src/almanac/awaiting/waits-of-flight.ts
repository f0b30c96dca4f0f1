import type { Contender } from '../../contest/contender.ts';
import { figureValues } from '../../contest/rules/figure-values.ts';
import { figuresForLimits } from '../../contest/rules/figures-for-limits.ts';
import { nameOfFigure } from '../../contest/rules/name-of-figure.ts';
import type { JudgedFlight } from '../../contest/standing.ts';
import { figureMissed, missed, narrowlyMissed } from '../../contest/verdicts/missed-limit.ts';
import { isPresent } from '../../figures/figure.ts';
import type { Challenge, Limit } from '../../model/challenge.ts';
import type { Flight } from '../../model/entry.ts';
import type { Quantity } from '../../quantities/quantity.ts';
import type { Wait } from './awaiting.ts';

/** Everything a flight waits for, the ruling first. For a flight that an acceptance would make count. */
export function waitsOfFlight(
  challenge: Challenge,
  contender: Contender,
  flight: Flight,
  judged: JudgedFlight,
): readonly Wait[] {
  return [
    ruling(contender, flight, judged),
    ...evidence(challenge, flight),
    ...timekeepers(challenge, flight),
    ...nearLimits(challenge, contender, flight, judged),
  ];
}

function ruling({ ruling: decided }: Contender, { number }: Flight, { stale }: JudgedFlight): Wait {
  const one = decided?.flights.find(({ flight }) => flight === number);
  return one === undefined ? { kind: 'ruling' } : { kind: 'new-ruling', ruledOn: one.date, changes: stale };
}

function evidence({ flying }: Challenge, flight: Flight): Wait[] {
  const [given, needed] = [flight.evidence.length, flying.evidence.links];
  return given >= needed ? [] : [{ kind: 'evidence', given, needed }];
}

function timekeepers({ flying }: Challenge, flight: Flight): Wait[] {
  const { atLeast: needed, orVideo } = flying.timekeepers;
  const given = flight.timekeepers.length;
  if (given >= needed || (orVideo && flight.timedBy === 'video')) return [];
  return [{ kind: 'timekeepers', given, needed, orVideo }];
}

function nearLimits(
  challenge: Challenge,
  contender: Contender,
  flight: Flight,
  { setup }: JudgedFlight,
): Wait[] {
  const figures = figuresForLimits(contender, flight, setup);
  const ofModel = challenge.eligibility.flatMap((condition) => {
    if (condition.kind !== 'figure') return [];
    const near = figureValues(figures, condition.figure)
      .filter(isPresent)
      .find(({ value, u, basis }) => narrowlyMissed(condition.limit, value, u, basis === 'inspected'));
    if (near === undefined) return [];
    const told: Wait = { kind: 'near-limit', sentence: figureMissed(condition.limit, near) };
    const inspection: Wait = { kind: 'inspection', figure: nameOfFigure(condition.figure) };
    return near.basis === 'inspected' ? [told] : [told, inspection];
  });
  return [
    ...ofModel,
    ...nearHeight('launch height', flight.launchHeight, challenge.flying.launchHeight),
    ...nearHeight('drop', flight.drop, challenge.flying.drop),
  ];
}

function nearHeight(name: string, stated: Quantity | null, limit: Limit | null): Wait[] {
  if (stated === null || limit === null) return [];
  const { value, u, origin } = stated;
  const inspected = origin === 'inspected';
  if (!narrowlyMissed(limit, value, u, inspected)) return [];
  return [{ kind: 'near-limit', sentence: missed(name, limit, { value, u, inspected }, 'length') }];
}
