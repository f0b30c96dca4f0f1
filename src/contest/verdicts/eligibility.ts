import type { Condition, Limit } from '../../model/challenge.ts';
import type { Quantity } from '../../quantities/quantity.ts';
import { unmet } from '../rules/condition.ts';
import { facts } from '../rules/facts.ts';
import { holds } from '../rules/limit.ts';
import { scaleFactor } from '../rules/scale.ts';
import { type FlightCase, isSettled } from './flight-case.ts';
import { missed, narrowlyMissed } from './missed-limit.ts';

/** Staggers of up to this many seconds are still a release together. */
const togetherWithin = 0.5;

/** The checks in the order in which their reasons are given: the first that fails speaks. */
const checks: readonly ((one: FlightCase) => string | null)[] = [
  figures,
  scale,
  declaredFacts,
  launch,
  launchHeight,
  drop,
  release,
  round,
  evidence,
  timekeepers,
  ({ beyondAllowance }) => beyondAllowance,
];

/** Why a flight cannot count under the rules, fit for a public page; null where it can. */
export function ineligibleBecause(one: FlightCase): string | null {
  for (const check of checks) {
    const reason = check(one);
    if (reason !== null) return reason;
  }
  return null;
}

function figures(one: FlightCase): string | null {
  return firstUnmet(
    one,
    one.challenge.eligibility.filter(({ kind }) => kind === 'figure'),
  );
}

function scale({ challenge, figures }: FlightCase): string | null {
  const factor = scaleFactor(challenge.scoring, figures);
  return typeof factor === 'string' ? factor : null;
}

/** Control first, then what is on board, whatever the order in the rules. */
function declaredFacts(one: FlightCase): string | null {
  const inOrder = facts.flatMap((fact) =>
    one.challenge.eligibility.filter((condition) => condition.kind === 'fact' && condition.fact === fact),
  );
  return firstUnmet(one, inOrder);
}

function firstUnmet(one: FlightCase, conditions: readonly Condition[]): string | null {
  const tested = { design: one.setup.design, junior: one.junior, figures: one.figures };
  for (const condition of conditions) {
    const reason = unmet(condition, tested, isSettled(one));
    if (reason !== null) return reason;
  }
  return null;
}

const launchInWords = {
  hand: 'thrown by hand',
  ground: 'launched from the ground',
  water: 'launched from water',
};

/** A flight that does not say how it was launched is taken as thrown by hand. */
function launch({ challenge, flight }: FlightCase): string | null {
  const allowed = challenge.flying.launch;
  const how = flight.launch ?? 'hand';
  if (allowed === null || allowed.includes(how)) return null;
  return `${launchInWords[how]}; allowed is ${allowed.map((way) => launchInWords[way]).join(' or ')}`;
}

function launchHeight(one: FlightCase): string | null {
  return measuredUnmet(one, 'launch height', one.flight.launchHeight, one.challenge.flying.launchHeight);
}

function drop(one: FlightCase): string | null {
  return measuredUnmet(one, 'drop', one.flight.drop, one.challenge.flying.drop);
}

/** Only a stated height is tested. */
function measuredUnmet(
  one: FlightCase,
  name: string,
  stated: Quantity | null,
  limit: Limit | null,
): string | null {
  if (stated === null || limit === null || holds(limit, stated.value)) return null;
  const { value, u, origin } = stated;
  const inspected = origin === 'inspected';
  if (isSettled(one) && narrowlyMissed(limit, value, u, inspected)) return null;
  return missed(name, limit, { value, u, inspected }, 'length');
}

/** Rules that say `staged`, or nothing, allow either. */
function release({ challenge, flight }: FlightCase): string | null {
  const stagger = flight.release?.stagger?.value ?? 0;
  if (challenge.flying.release !== 'together' || stagger <= togetherWithin + 1e-9) return null;
  return `the motors were released ${stagger} s apart; together means ${togetherWithin} s or less`;
}

function round({ challenge, flight }: FlightCase): string | null {
  if (challenge.scoring.method !== 'rounds') return null;
  if (flight.round === null) return 'names no round';
  const named = challenge.rounds.find(({ id }) => id === flight.round);
  if (named === undefined) return `names the round "${flight.round}", which this challenge does not have`;
  const day = flight.date.date;
  if (named.from !== null && day < named.from)
    return `flown on ${day}, before round ${named.id} began on ${named.from}`;
  if (named.to !== null && day > named.to)
    return `flown on ${day}, after round ${named.id} ended on ${named.to}`;
  return null;
}

/** A provisional flight is tested on the number of its links only; an acceptance settles what they show. */
function evidence(one: FlightCase): string | null {
  const { links } = one.challenge.flying.evidence;
  const given = one.flight.evidence.length;
  if (isSettled(one) || given >= links) return null;
  return `${counted(given, 'link')} to evidence; needs ${links}`;
}

function timekeepers(one: FlightCase): string | null {
  const { atLeast, orVideo } = one.challenge.flying.timekeepers;
  const given = one.flight.timekeepers.length;
  if (isSettled(one) || given >= atLeast || (orVideo && one.flight.timedBy === 'video')) return null;
  return `${counted(given, 'timekeeper')}; needs ${atLeast}${orVideo ? ' or a time from the video' : ''}`;
}

function counted(number: number, thing: string): string {
  return `${number === 0 ? 'no' : number} ${thing}${number === 1 ? '' : 's'}`;
}
