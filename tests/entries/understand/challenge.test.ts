import { describe, expect, it } from 'vitest';
import { challengeOf, rulingOf, smallestChallenge } from '../written.ts';

// Expected meanings and defaults are those of content format 1.

const meaning = (lines: string) => {
  const { challenge, problems } = challengeOf(`${smallestChallenge}\n${lines}`);
  if (challenge === null) throw new Error(problems.map(({ message }) => message).join(' '));
  return challenge;
};

describe('a challenge that says no more than it must', () => {
  it('has the defaults of the format', () => {
    expect(meaning('')).toEqual({
      id: 'long-haul-2027',
      title: 'Long Haul',
      opens: '2027-03-01',
      closes: '2027-10-31',
      reportBy: null,
      final: null,
      timeZone: null,
      target: null,
      milestones: [],
      eligibility: [],
      flying: {
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
      },
      timing: {
        starts: 'release',
        stops: { touchdown: true, outOfSight: null },
        combine: 'mean',
        resolution: '0.1',
        round: 'down',
        uncertainty: { watch: 0.1, video: 0.05 },
      },
      scoring: { method: 'best', flights: 3, scale: null, provisional: 'apart' },
      tieBreaks: [],
      divisions: [],
      rounds: [],
      protests: null,
      amendments: [],
      formerly: [],
      body: 'Body.\n',
    });
  });
});

describe('the rules of a challenge', () => {
  it('read sentences as limits in SI, with and without their ends', () => {
    expect(
      meaning('eligibility: { span: at least 2.4 m, wing-area: 17 to 19 dm2, rubber-share: less than 30 % }')
        .eligibility,
    ).toEqual([
      {
        kind: 'figure',
        figure: 'span',
        limit: { low: { value: 2.4, included: true }, high: null, written: 'at least 2.4 m' },
      },
      {
        kind: 'figure',
        figure: 'wing-area',
        limit: {
          low: { value: expect.closeTo(0.17, 12), included: true },
          high: { value: expect.closeTo(0.19, 12), included: true },
          written: '17 to 19 dm2',
        },
      },
      {
        kind: 'figure',
        figure: 'rubber-share',
        limit: {
          low: null,
          high: { value: expect.closeTo(0.3, 12), included: false },
          written: 'less than 30 %',
        },
      },
    ]);
  });

  it('read declared facts, one word or a list', () => {
    expect(
      meaning('divisions: [{ id: j, name: Juniors, junior: true, control: free, layout: [canard, tandem] }]')
        .divisions,
    ).toEqual([
      {
        id: 'j',
        name: 'Juniors',
        conditions: [
          { kind: 'fact', fact: 'control', allowed: ['free'] },
          { kind: 'fact', fact: 'layout', allowed: ['canard', 'tandem'] },
          { kind: 'fact', fact: 'junior', allowed: ['true'] },
        ],
      },
    ]);
  });

  it('read allowances, timekeepers and tie-breaks', () => {
    const challenge = meaning(`flying: { flights-per-day: at most 9, flights: 60, timekeepers: 2 or video }
tie-break: [next-best-flight, larger span, smaller flying-mass, earlier flight]`);
    expect(challenge.flying).toMatchObject({
      flightsPerDay: 9,
      flights: 60,
      timekeepers: { atLeast: 2, orVideo: true },
    });
    expect(challenge.tieBreaks).toEqual([
      { kind: 'next-best-flight' },
      { kind: 'figure', figure: 'span', prefers: 'larger' },
      { kind: 'figure', figure: 'flying-mass', prefers: 'smaller' },
      { kind: 'earlier-flight' },
    ]);
  });

  it('keep the step of rounding as decimal text', () => {
    const step = (written: string) => meaning(`timing: { resolution: ${written} }`).timing.resolution;
    expect([step('0.01 s'), step('1/5 s'), step('1 s'), step('10 ms')]).toEqual(['0.01', '0.2', '1', '0.01']);
  });

  it('read a handicap in the unit of its figure', () => {
    expect(
      meaning('scoring: { scale: { by: wing-area, reference: 20 dm2, power: -0.5 } }').scoring.scale,
    ).toEqual({
      by: 'wing-area',
      reference: expect.closeTo(0.2, 12),
      power: -0.5,
    });
  });
});

describe('a ruling', () => {
  it('has facts as written and figures in SI', () => {
    const { ruling } = rulingOf(`inspected: { date: 2027-06-01, by: scales-team, span: 3.19 m }
flights:
  - flight: 1
    verdict: accepted
    by: otter
    date: 2027-05-12
    time: 43.1 s
    as-ruled: { setup: none, control: free, onboard: [release], junior: false, flying-mass: 649 g, skein-section: [0.4 cm2, 20 mm2] }`);
    expect(ruling?.flights[0]).toMatchObject({
      time: 43.1,
      asRuled: {
        setup: 'none',
        control: 'free',
        onboard: ['release'],
        junior: false,
        'flying-mass': 0.649,
        'skein-section': [expect.closeTo(4e-5, 15), expect.closeTo(2e-5, 15)],
      },
    });
    expect(ruling?.inspections).toMatchObject([
      { span: { value: 3.19, origin: 'inspected' }, airframe: null, rubber: null },
    ]);
  });

  it('has no devices on board where the list is empty', () => {
    const { ruling } = rulingOf(
      'flights: [{ flight: 1, verdict: accepted, by: otter, date: 2027-05-12, as-ruled: { onboard: [] } }]',
    );
    expect(ruling?.flights[0]?.asRuled).toEqual({ onboard: [] });
  });
});
