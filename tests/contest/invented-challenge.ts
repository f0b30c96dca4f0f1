import { parseLimit } from '../../src/contest/rules/limit.ts';
import type { Challenge, Condition, Fact, FlyingRules, Limit, Scoring } from '../../src/model/challenge.ts';
import type { Kind } from '../../src/quantities/quantity.ts';

// An invented challenge with no rule beyond its dates: each test adds the rules it is about.

export const noFlyingRules: FlyingRules = {
  launch: null,
  launchHeight: null,
  drop: null,
  release: null,
  attemptBelow: null,
  maximum: null,
  flightsPerDay: null,
  flights: null,
  timekeepers: { atLeast: 0, orVideo: false },
  evidence: { links: 0, shows: [] },
};

export const bestFlight: Scoring = { method: 'best', flights: 3, scale: null, provisional: 'apart' };

export function challenge(overrides: Partial<Challenge> = {}): Challenge {
  return {
    id: 'invented-2027',
    title: 'Invented challenge',
    opens: '2027-03-01',
    closes: '2027-10-31',
    reportBy: null,
    final: null,
    timeZone: null,
    target: null,
    milestones: [],
    eligibility: [],
    flying: noFlyingRules,
    timing: {
      starts: 'release',
      stops: { touchdown: true, outOfSight: null },
      combine: 'mean',
      resolution: '0.1',
      round: 'down',
      uncertainty: { watch: 0.1, video: 0.05 },
    },
    scoring: bestFlight,
    tieBreaks: [],
    divisions: [],
    rounds: [],
    protests: null,
    amendments: [],
    formerly: [],
    body: '',
    ...overrides,
  };
}

export function limit(sentence: string, kind: Kind): Limit {
  const parsed = parseLimit(sentence, kind);
  if (!parsed.ok) throw new Error(parsed.fault.message);
  return parsed.value;
}

export function figureCondition(figure: string, sentence: string, kind: Kind): Condition {
  return { kind: 'figure', figure, limit: limit(sentence, kind) };
}

export function factCondition(fact: Fact, ...allowed: string[]): Condition {
  return { kind: 'fact', fact, allowed };
}
