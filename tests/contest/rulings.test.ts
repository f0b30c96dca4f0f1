import { describe, expect, it } from 'vitest';
import { judge } from '../../src/contest/judge.ts';
import { factsAsRuled } from '../../src/contest/verdicts/as-ruled.ts';
import type { Figure } from '../../src/figures/figure.ts';
import type { Challenge } from '../../src/model/challenge.ts';
import type { FlightRuling, Inspection } from '../../src/model/ruling.ts';
import {
  bestFlight,
  challenge,
  factCondition,
  figureCondition,
  limit,
  noFlyingRules,
} from './invented-challenge.ts';
import {
  accepted,
  contender,
  figure,
  figures,
  flight,
  metres,
  on,
  type Parts,
  setup,
} from './invented-contender.ts';

const now = { now: '2027-06-01', frozen: null };
const spanRule = challenge({ eligibility: [figureCondition('span', 'at least 2.4 m', 'length')] });

function judged(rules: Challenge, ruling: FlightRuling, parts: Parts = {}) {
  const one = contender('a', { flights: [flight(1, 40)], ...parts, rulings: [ruling] });
  const found = judge(rules, [one], now).entries.get('a')?.flights[0];
  if (found === undefined) throw new Error('the flight was lost');
  return found;
}

const spanned = (value: number, u = 0.0001, basis: 'measured' | 'inspected' = 'measured'): Parts => ({
  figures: figures(figure('span', 'm', value, u, basis)),
});

describe('an acceptance', () => {
  it('lapses when the flight is edited: the seal no longer fits', () => {
    const found = judged(challenge(), accepted(1, { seal: '1-0345b3da7446da48' }));
    expect(found).toMatchObject({ status: 'provisional', counted: false });
    expect(found.reason).toBe(
      'accepted on 2027-05-12, but what is written about the flight has changed since: waits for a new ruling',
    );
    expect(found.stale).toEqual([{ what: 'seal', ruled: '1-0345b3da7446da48', now: '1-0000000000000000' }]);
  });

  it('without a seal never fits', () => {
    const found = judged(challenge(), accepted(1, { seal: null }));
    expect(found).toMatchObject({ status: 'provisional' });
    expect(found.stale).toEqual([{ what: 'seal', ruled: 'none', now: '1-0000000000000000' }]);
    expect(found.reason).toContain('that ruling carries no seal');
  });

  it('lapses when the builder changes a figure by more than 0.1 %, and shows both values', () => {
    const asRuled = { span: 3 };
    expect(judged(spanRule, accepted(1, { asRuled }), spanned(3.003)).status).toBe('accepted');
    const found = judged(spanRule, accepted(1, { asRuled }), spanned(3.004));
    expect(found.status).toBe('provisional');
    expect(found.stale).toEqual([{ what: 'span', ruled: '3.000 m', now: '3.004 m' }]);
    expect(found.reason).toBe(
      'accepted on 2027-05-12, but the span was 3.000 m then and is 3.004 m now: waits for a new ruling',
    );
  });

  it('compares only what the ruling wrote down', () => {
    expect(judged(spanRule, accepted(1, { asRuled: { control: 'free' } }), spanned(9)).status).toBe(
      'accepted',
    );
  });

  it('lapses when a declared fact, the setup, or whether a builder is a junior changes', () => {
    const asRuled = { setup: 'none', control: 'guided', onboard: ['release'], junior: true };
    const found = judged(challenge(), accepted(1, { asRuled }), {
      setups: [setup(null, null), setup('b', '2027-05-01')],
    });
    expect(found.stale).toEqual([
      { what: 'setup', ruled: 'none', now: 'b' },
      { what: 'control', ruled: 'guided', now: 'free' },
      { what: 'onboard', ruled: 'release', now: 'none' },
      { what: 'junior', ruled: 'yes', now: 'no' },
    ]);
  });

  it('takes what is on board as a set', () => {
    const asRuled = { onboard: ['locator', 'release'] };
    const parts: Parts = { setups: [setup(null, null, { onboard: ['release', 'locator'] })] };
    expect(judged(challenge(), accepted(1, { asRuled }), parts).status).toBe('accepted');
  });

  it('lapses when a figure that was ruled on can no longer be worked out', () => {
    const absent: Figure = { id: 'tail-volume', unit: '1', absent: "needs the tailplane's arm" };
    const found = judged(challenge(), accepted(1, { asRuled: { 'tail-volume': 0.9 } }), {
      figures: figures(absent),
    });
    expect(found.stale).toEqual([
      { what: 'tail-volume', ruled: '0.9', now: "absent: needs the tailplane's arm" },
    ]);
  });

  it('compares a figure of motors item by item', () => {
    const motors = (...turns: number[]): Parts => ({
      figures: {
        entry: new Map(),
        motors: turns.map((value) => new Map([['break-turns', figure('break-turns', 'turns', value)]])),
      },
    });
    const ruling = accepted(1, { asRuled: { 'break-turns': [800, 600] } });
    expect(judged(challenge(), ruling, motors(800, 600)).status).toBe('accepted');
    expect(judged(challenge(), ruling, motors(600, 800)).status).toBe('provisional');
    expect(judged(challenge(), ruling, motors(800)).status).toBe('provisional');
  });

  it('does not count a flight that is ineligible by now', () => {
    expect(judged(spanRule, accepted(1), spanned(2.3)).status).toBe('ineligible');
  });
});

describe('a ruled time', () => {
  const ruling = accepted(1, { time: 43.1, reason: 'Third watch read from the video.' });

  it('is the official time, as it is, and its reason is shown', () => {
    expect(judged(challenge(), ruling)).toMatchObject({
      status: 'accepted',
      official: { seconds: 43.1, u: 0.1, ruled: true },
      reason: 'Third watch read from the video.',
      score: 43.1,
    });
  });

  it('falls with the acceptance', () => {
    expect(judged(challenge(), { ...ruling, seal: '1-ffffffffffffffff' })).toMatchObject({
      status: 'provisional',
      official: { seconds: 40, ruled: false },
    });
  });
});

describe('a limit missed narrowly', () => {
  // Missed by 0.01 m.
  it('is settled by an acceptance where it is missed by less than 2u', () => {
    expect(judged(spanRule, accepted(1), spanned(2.39, 0.0051)).status).toBe('accepted');
    expect(judged(spanRule, accepted(1), spanned(2.39, 0.0049)).status).toBe('ineligible');
  });

  it('is not settled without one', () => {
    const one = contender('a', { flights: [flight(1, 40)], ...spanned(2.39, 0.0051) });
    expect(judge(spanRule, [one], now).entries.get('a')?.flights[0]?.status).toBe('ineligible');
  });

  it('takes the builder’s own uncertainty up to 1 %, an inspected one as it is', () => {
    // Missed by 0.06 m; 2 × 1 % of 2.34 m is 0.0468 m.
    expect(judged(spanRule, accepted(1), spanned(2.34, 0.05)).status).toBe('ineligible');
    expect(judged(spanRule, accepted(1), spanned(2.34, 0.05, 'inspected')).status).toBe('accepted');
  });

  it('may be one of launch height or drop', () => {
    const rules = challenge({
      flying: { ...noFlyingRules, launchHeight: limit('at most 2.2 m', 'length') },
    });
    const flown = (height: number): Parts => ({
      flights: [flight(1, 40, { launchHeight: metres(height, 0.01) })],
    });
    expect(judged(rules, accepted(1), flown(2.219)).status).toBe('accepted');
    expect(judged(rules, accepted(1), flown(2.221)).status).toBe('ineligible');
  });
});

describe('an inspection after a ruling', () => {
  const inspection: Inspection = {
    date: '2027-06-01',
    by: 'scales-team',
    span: metres(3.19),
    wingArea: null,
    airframe: null,
    rubber: null,
    balance: null,
  };
  /** A builder's span, and an inspected one that stands instead of it where the inspection is laid over. */
  const inspected = (builders: number, officials: number, u = 0.0001): Parts => ({
    inspections: [{ ...inspection, span: metres(officials) }],
    ...spanned(officials, u, 'inspected'),
    figuresAtFlight: (_flight, _setup, inspections) =>
      figures(figure('span', 'm', inspections?.length === 0 ? builders : officials, u)),
  });

  it('reopens nothing while every limit answers the same', () => {
    expect(judged(spanRule, accepted(1, { asRuled: { span: 3.2 } }), inspected(3.2, 3.19)).status).toBe(
      'accepted',
    );
  });

  it('reopens the flight where a limit answers otherwise', () => {
    const found = judged(spanRule, accepted(1, { asRuled: { span: 2.41 } }), inspected(2.41, 2.35));
    expect(found.status).toBe('ineligible');
    expect(found.stale).toEqual([{ what: 'span', ruled: '2.41 m', now: '2.35 m' }]);
  });

  it('answers the same where the limit is missed by less than 2u only', () => {
    expect(
      judged(spanRule, accepted(1, { asRuled: { span: 2.41 } }), inspected(2.41, 2.39, 0.006)).status,
    ).toBe('accepted');
  });

  it('does not hide that the builder changed the figure too', () => {
    const found = judged(spanRule, accepted(1, { asRuled: { span: 3.2 } }), inspected(3.3, 3.19));
    expect(found.status).toBe('provisional');
  });

  it('reopens the flight where a division answers otherwise, and leaves it there within 2u', () => {
    const rules = challenge({
      divisions: [
        { id: 'grand', name: 'Grand', conditions: [figureCondition('span', 'at least 4 m', 'length')] },
        { id: 'small', name: 'Small', conditions: [figureCondition('span', 'less than 4 m', 'length')] },
      ],
    });
    const ruling = accepted(1, { asRuled: { span: 4 } });
    expect(judged(rules, ruling, inspected(4, 3.9)).status).toBe('provisional');
    const within = contender('a', {
      flights: [flight(1, 40)],
      ...inspected(4, 3.99, 0.006),
      rulings: [ruling],
    });
    expect(judge(rules, [within], now).standings).toMatchObject([{ divisions: ['grand'] }]);
  });
});

describe('the facts a ruling writes down', () => {
  const rules = challenge({
    eligibility: [
      figureCondition('span', 'at least 2.4 m', 'length'),
      factCondition('onboard', 'release'),
      factCondition('control', 'free'),
    ],
    divisions: [
      { id: 'juniors', name: 'Juniors', conditions: [factCondition('junior', 'true')] },
      { id: 'own', name: 'Own', conditions: [factCondition('origin', 'own'), ...spanRule.eligibility] },
    ],
    scoring: { ...bestFlight, scale: { by: 'wing-area', reference: 1, power: 0.5 } },
    tieBreaks: [
      { kind: 'next-best-flight' },
      { kind: 'figure', figure: 'break-turns', prefers: 'larger' },
      { kind: 'figure', figure: 'tail-volume', prefers: 'larger' },
    ],
  });
  const entry = contender('a', {
    flights: [flight(1, 40, on('2027-06-11'))],
    setups: [setup(null, null), setup('b', '2027-06-10', { origin: null })],
    figures: {
      entry: new Map<string, Figure>([
        ['span', figure('span', 'm', 3.2)],
        ['wing-area', figure('wing-area', 'm2', 0.876)],
        ['tail-volume', { id: 'tail-volume', unit: '1', absent: "needs the tailplane's arm" }],
      ]),
      motors: [800, 600].map((value) => new Map([['break-turns', figure('break-turns', 'turns', value)]])),
    },
  });

  it('are the setup and what the rules name; absent ones are left out, motors are a list', () => {
    const [first] = entry.entry.flights;
    if (first === undefined) throw new Error('no flight');
    expect(factsAsRuled(rules, entry, first)).toEqual({
      setup: 'b',
      control: 'free',
      onboard: [],
      junior: false,
      span: 3.2,
      'wing-area': 0.876,
      'break-turns': [800, 600],
    });
  });

  it('fit a ruling that writes them down', () => {
    const [first] = entry.entry.flights;
    if (first === undefined) throw new Error('no flight');
    const ruling = accepted(1, { asRuled: factsAsRuled(rules, entry, first) });
    const own = { ...entry, ruling: { ...contender('a', { rulings: [ruling] }).ruling! } };
    expect(judge(rules, [own], now).entries.get('a')?.flights[0]).toMatchObject({
      status: 'accepted',
      stale: [],
    });
  });
});
