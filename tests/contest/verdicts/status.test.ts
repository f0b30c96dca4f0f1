import { describe, expect, it } from 'vitest';
import { judge } from '../../../src/contest/judge.ts';
import type { Challenge } from '../../../src/model/challenge.ts';
import type { Flight } from '../../../src/model/entry.ts';
import type { FlightRuling } from '../../../src/model/ruling.ts';
import { challenge, factCondition, figureCondition, limit, noFlyingRules } from '../invented-challenge.ts';
import {
  accepted,
  contender,
  design,
  figure,
  figures,
  flight,
  metres,
  on,
  type Parts,
} from '../invented-contender.ts';

function judgeOne(rules: Challenge, one: Flight, ruling: FlightRuling | null = null, parts: Parts = {}) {
  const entry = contender('a', {
    ...parts,
    flights: [one],
    ...(ruling === null ? {} : { rulings: [ruling] }),
  });
  const judged = judge(rules, [entry], { now: '2027-06-01', frozen: null }).entries.get('a')?.flights[0];
  if (judged === undefined) throw new Error('the flight was lost');
  return judged;
}

function statusOf(...of: Parameters<typeof judgeOne>): readonly [string, string | null] {
  const { status, reason } = judgeOne(...of);
  return [status, reason];
}

function flying(rules: Partial<Challenge['flying']>): Challenge {
  return challenge({ flying: { ...noFlyingRules, ...rules } });
}

describe('the status of a flight', () => {
  it('is provisional until somebody rules', () => {
    expect(statusOf(challenge(), flight(1, 40))).toEqual(['provisional', null]);
  });

  it('is accepted by a ruling that fits', () => {
    expect(statusOf(challenge(), flight(1, 40), accepted(1))).toEqual(['accepted', null]);
  });

  it('is withdrawn where the builder took it back, whatever was ruled', () => {
    expect(statusOf(challenge(), flight(1, 40, { withdrawn: true }), accepted(1))).toEqual([
      'withdrawn',
      'taken back by the builder',
    ]);
  });

  it('is void or refused with the organiser’s reason', () => {
    const why = 'The landing is not on the video.';
    expect(statusOf(challenge(), flight(1, 40), accepted(1, { verdict: 'refused', reason: why }))).toEqual([
      'refused',
      why,
    ]);
    expect(statusOf(challenge(), flight(1, 40), accepted(1, { verdict: 'void' }))).toEqual([
      'void',
      'ruled void: it does not count',
    ]);
  });

  it('stays void or refused when the flight is edited afterwards', () => {
    const ruling = accepted(1, { verdict: 'refused', seal: '1-ffffffffffffffff' });
    expect(statusOf(challenge(), flight(1, 40), ruling)[0]).toBe('refused');
  });

  it.each([
    ['2027-02-28', 'flown on 2027-02-28, before the challenge opened on 2027-03-01'],
    ['2027-11-01', 'flown on 2027-11-01, after the challenge closed on 2027-10-31'],
  ])('is outside the dates on %s', (day, reason) => {
    expect(statusOf(challenge(), flight(1, 40, on(day)))).toEqual(['outside-dates', reason]);
  });

  it.each(['2027-03-01', '2027-10-31'])('is inside the dates on the very day %s', (day) => {
    expect(statusOf(challenge(), flight(1, 40, on(day)))[0]).toBe('provisional');
  });

  // Kiritimati keeps UTC+14:00, Baker Island UTC-12:00: the same instant is two days apart at most.
  it.each([
    ['2027-03-01', '00:30', 14 * 60, 'provisional'],
    ['2027-02-28', '23:30', -12 * 60, 'outside-dates'],
    ['2027-10-31', '23:30', -12 * 60, 'provisional'],
    ['2027-11-01', '00:30', 14 * 60, 'outside-dates'],
  ] as const)('%s %s at %i minutes east goes by its own calendar date', (day, clock, offset, status) => {
    expect(statusOf(challenge(), flight(1, 40, on(day, clock, offset)))[0]).toBe(status);
  });

  it('is reported late only where the organiser noted when it came', () => {
    const rules = challenge({ reportBy: '2027-11-14' });
    expect(statusOf(rules, flight(1, 40), accepted(1, { received: '2027-11-15' }))).toEqual([
      'reported-late',
      'handed in on 2027-11-15; flights were to be handed in by 2027-11-14',
    ]);
    expect(statusOf(rules, flight(1, 40), accepted(1, { received: '2027-11-14' }))[0]).toBe('accepted');
    expect(statusOf(rules, flight(1, 40), accepted(1))[0]).toBe('accepted');
    expect(statusOf(rules, flight(1, 40))[0]).toBe('provisional');
  });

  it('is an attempt below the time a flight counts from, even when accepted', () => {
    expect(statusOf(flying({ attemptBelow: 4 }), flight(1, 3.9), accepted(1))).toEqual([
      'attempt',
      '3.9 s; a flight counts from 4 s',
    ]);
    expect(statusOf(flying({ attemptBelow: 4 }), flight(1, 4))[0]).toBe('provisional');
  });

  it('is the first that holds, in the fixed order', () => {
    const rules = challenge({
      reportBy: '2027-11-14',
      flying: { ...noFlyingRules, attemptBelow: 4, launch: ['ground'] },
    });
    const late = accepted(1, { received: '2027-12-24' });
    const wrong = flight(1, 1, { ...on('2027-01-01'), launch: 'water', withdrawn: true });
    const order = [
      statusOf(rules, wrong, { ...late, verdict: 'void' }),
      statusOf(rules, { ...wrong, withdrawn: false }, { ...late, verdict: 'void' }),
      statusOf(rules, { ...wrong, withdrawn: false }, late),
      statusOf(rules, { ...wrong, ...on('2027-05-09'), withdrawn: false }, late),
      statusOf(rules, { ...wrong, ...on('2027-05-09'), withdrawn: false }, accepted(1)),
      statusOf(rules, { ...wrong, ...on('2027-05-09'), withdrawn: false, launch: 'ground' }, accepted(1)),
    ];
    expect(order.map(([status]) => status)).toEqual([
      'withdrawn',
      'void',
      'outside-dates',
      'reported-late',
      'ineligible',
      'attempt',
    ]);
  });
});

describe('an ineligible flight', () => {
  const span = challenge({ eligibility: [figureCondition('span', 'at least 2.4 m', 'length')] });
  const withSpan = (value: number, u = 0.0001): Parts => ({
    figures: figures(figure('span', 'm', value, u)),
  });

  it('names the figure, its value and the limit', () => {
    expect(statusOf(span, flight(1, 40), null, withSpan(2.35))).toEqual([
      'ineligible',
      'the span of 2.35 m is below the limit of at least 2.4 m',
    ]);
  });

  it.each([
    ['wing-area', 'm2', 'area', '17 to 19 dm2', 0.165, 'wing area of 16.5 dm2 is below'],
    // 13 N/m² / 9.80665 = 1.325631 kg/m² = 13.25631 g/dm².
    ['wing-loading', 'N/m2', 'loading', 'at most 12 g/dm2', 13, 'wing loading of 13.26 g/dm2 is above'],
    // 3 m / 0.3048 = 9.842520 ft; 3.3 m / 0.0254 = 129.9213 in.
    ['span', 'm', 'length', "10' to 12'", 3, 'span of 9.843 ft is below'],
    ['span', 'm', 'length', 'at most 10 ft 6 in', 3.3, 'span of 129.9 in is above'],
    ['rubber-share', '1', 'share', '20 to 40 %', 0.1, 'share of rubber of 10 % is below'],
    // 0.05 rad = 2.864789°.
    ['decalage', 'rad', 'angle', '3° to 4°', 0.05, 'decalage of 2.865° is below'],
    // Four digits would say 16.50 of 16.5: 0.1649998 m² is 16.49998 dm².
    ['wing-area', 'm2', 'area', 'at least 16.5 dm2', 0.1649998, 'wing area of 16.49998 dm2 is below'],
  ] as const)(
    'shows the %s [%s] of a limit of %s "%s" in its own unit and no more digits than tell',
    (id, unit, kind, sentence, value, words) => {
      const rules = challenge({ eligibility: [figureCondition(id, sentence, kind)] });
      expect(statusOf(rules, flight(1, 40), null, { figures: figures(figure(id, unit, value)) })[1]).toBe(
        `the ${words} the limit of ${sentence}`,
      );
    },
  );

  it('shows as many digits as it takes to see the difference', () => {
    expect(statusOf(span, flight(1, 40), null, withSpan(2.39998, 1e-6))[1]).toBe(
      'the span of 2.39998 m is below the limit of at least 2.4 m',
    );
  });

  it('says so where it misses by less than measuring can tell, and leaves it to the ruling', () => {
    // 2.4 − 2.396 = 0.004 m, less than 2 × 0.005 m.
    expect(statusOf(span, flight(1, 40), null, withSpan(2.396, 0.005))).toEqual([
      'ineligible',
      'the span of 2.3960 m ± 0.0050 m against at least 2.4 m is inside the measuring error: the ruling decides',
    ]);
    // A wide guess opens no door: u is taken as 1 % of 2.35 m, 0.0235 m, and 0.05 m is more than twice that.
    expect(statusOf(span, flight(1, 40), null, withSpan(2.35, 0.5))[1]).toBe(
      'the span of 2.35 m is below the limit of at least 2.4 m',
    );
    const low = challenge({ flying: { ...noFlyingRules, launchHeight: limit('at most 2.2 m', 'length') } });
    expect(statusOf(low, flight(1, 40, { launchHeight: metres(2.21, 0.01) }))[1]).toBe(
      'the launch height of 2.210 m ± 0.010 m against at most 2.2 m is inside the measuring error: the ruling decides',
    );
  });

  it('speaks in the unit of the limit', () => {
    const heavy = challenge({ eligibility: [figureCondition('flying-mass', 'less than 500 g', 'mass')] });
    const parts = (mass: number): Parts => ({ figures: figures(figure('flying-mass', 'kg', mass)) });
    expect(statusOf(heavy, flight(1, 40), null, parts(0.612))[1]).toBe(
      'the flying mass of 612 g is above the limit of less than 500 g',
    );
    expect(statusOf(heavy, flight(1, 40), null, parts(0.5))[1]).toBe(
      'the flying mass of 500 g is at the very end left out by the limit of less than 500 g',
    );
  });

  it('cannot be checked where the figure is absent', () => {
    const rules = challenge({ eligibility: [figureCondition('tail-volume', 'at least 0.5', 'number')] });
    const parts: Parts = {
      figures: figures({ id: 'tail-volume', unit: '1', absent: "needs the tailplane's arm" }),
    };
    expect(statusOf(rules, flight(1, 40), null, parts)).toEqual([
      'ineligible',
      "the tail volume cannot be checked: needs the tailplane's arm",
    ]);
  });

  it('must hold for every motor', () => {
    const rules = challenge({ eligibility: [figureCondition('break-turns', 'at most 700', 'turns')] });
    const motors = (...turns: number[]): Parts => ({
      figures: {
        entry: new Map(),
        motors: turns.map((value) => new Map([['break-turns', figure('break-turns', 'turns', value)]])),
      },
    });
    expect(statusOf(rules, flight(1, 40), null, motors(600, 700))[0]).toBe('provisional');
    expect(statusOf(rules, flight(1, 40), null, motors(600, 701))).toEqual([
      'ineligible',
      'the break turns of 701 is above the limit of at most 700',
    ]);
  });

  it.each([
    [
      factCondition('control', 'free'),
      design({ control: 'guided' }),
      false,
      'the control is guided; allowed is free',
    ],
    [
      factCondition('onboard', 'release', 'locator'),
      design({ onboard: ['release', 'stabiliser'] }),
      false,
      'stabiliser on board; allowed on board is release, locator',
    ],
    [
      factCondition('layout', 'canard', 'tandem'),
      design(),
      false,
      'the layout is tail-aft; allowed is canard or tandem',
    ],
    [
      factCondition('origin', 'own'),
      design({ origin: null }),
      false,
      'cannot be checked: needs the origin stated (own)',
    ],
    [factCondition('junior', 'true'), design(), false, 'open to juniors only'],
    [factCondition('junior', 'false'), design(), true, 'not open to juniors'],
  ] as const)('says which declared fact stands against it: %o', (condition, declared, junior, reason) => {
    const parts: Parts = {
      setups: [{ id: null, from: null, change: null, design: declared, overrides: [] }],
      junior,
    };
    expect(statusOf(challenge({ eligibility: [condition] }), flight(1, 40), null, parts)).toEqual([
      'ineligible',
      reason,
    ]);
  });

  it('was launched in a way not allowed; without a word it is taken as thrown by hand', () => {
    expect(statusOf(flying({ launch: ['hand'] }), flight(1, 40, { launch: 'ground' }))).toEqual([
      'ineligible',
      'launched from the ground; allowed is thrown by hand',
    ]);
    expect(statusOf(flying({ launch: ['hand'] }), flight(1, 40))[0]).toBe('provisional');
    expect(statusOf(flying({ launch: ['ground', 'water'] }), flight(1, 40))[1]).toBe(
      'thrown by hand; allowed is launched from the ground or launched from water',
    );
  });

  it('is tested on a stated launch height and drop only', () => {
    const rules = flying({
      launchHeight: limit('at most 2.2 m', 'length'),
      drop: limit('at most 5 m', 'length'),
    });
    expect(statusOf(rules, flight(1, 40, { launchHeight: metres(2.5) }))[1]).toBe(
      'the launch height of 2.5 m is above the limit of at most 2.2 m',
    );
    expect(statusOf(rules, flight(1, 40, { drop: metres(6) }))[1]).toBe(
      'the drop of 6 m is above the limit of at most 5 m',
    );
    expect(statusOf(rules, flight(1, 40))[0]).toBe('provisional');
  });

  it.each([
    ['together', 0.6, 'ineligible'],
    ['together', 0.5, 'provisional'],
    ['together', null, 'provisional'],
    ['staged', 3, 'provisional'],
    [null, 3, 'provisional'],
  ] as const)('release %s with a stagger of %s s is %s', (release, stagger, status) => {
    const time = stagger === null ? null : { ...metres(stagger), kind: 'time' as const };
    const judged = statusOf(flying({ release }), flight(1, 40, { release: { how: 'pins', stagger: time } }));
    expect(judged[0]).toBe(status);
  });

  it('needs its links and its timekeepers, or an accepting ruling that settles them', () => {
    const rules = flying({
      evidence: { links: 1, shows: ['landing'] },
      timekeepers: { atLeast: 2, orVideo: true },
    });
    const bare = flight(1, 40);
    const linked = flight(1, 40, { evidence: ['https://video.example/abc'] });
    expect(statusOf(rules, bare)).toEqual(['ineligible', 'no links to evidence; needs 1']);
    expect(statusOf(rules, { ...linked, timekeepers: ['otter'] })).toEqual([
      'ineligible',
      '1 timekeeper; needs 2 or a time from the video',
    ]);
    expect(statusOf(rules, { ...linked, timedBy: 'video' })[0]).toBe('provisional');
    expect(statusOf(rules, { ...linked, timekeepers: ['otter', 'heron'] })[0]).toBe('provisional');
    expect(statusOf(rules, bare, accepted(1))[0]).toBe('accepted');
  });

  it('speaks of the first of its faults in the fixed order', () => {
    const rules = challenge({
      eligibility: [factCondition('onboard'), factCondition('control', 'guided'), ...span.eligibility],
      flying: {
        ...noFlyingRules,
        launch: ['ground'],
        launchHeight: limit('at most 2 m', 'length'),
        drop: limit('at most 1 m', 'length'),
        release: 'together',
        evidence: { links: 1, shows: [] },
        timekeepers: { atLeast: 1, orVideo: false },
        flights: 0,
      },
    });
    const stagger = { ...metres(2), kind: 'time' as const };
    let one = flight(1, 40, { launchHeight: metres(3), drop: metres(2), release: { how: null, stagger } });
    let parts: Parts = { ...withSpan(1), setups: [setupWith(design({ onboard: ['locator'] }))] };
    const said: (string | null)[] = [];
    const say = () => said.push(statusOf(rules, one, null, parts)[1]?.split(/[;:,]| of | is /)[0] ?? null);
    say();
    parts = { ...parts, ...withSpan(3) };
    say();
    parts = { ...parts, setups: [setupWith(design({ control: 'guided', onboard: ['locator'] }))] };
    say();
    parts = { ...parts, setups: [setupWith(design({ control: 'guided' }))] };
    say();
    one = { ...one, launch: 'ground' };
    say();
    one = { ...one, launchHeight: null };
    say();
    one = { ...one, drop: null };
    say();
    one = { ...one, release: null };
    say();
    one = { ...one, evidence: ['https://video.example/abc'] };
    say();
    one = { ...one, timekeepers: ['otter'] };
    say();
    expect(said).toEqual([
      'the span',
      'the control',
      'locator on board',
      'thrown by hand',
      'the launch height',
      'the drop',
      'the motors were released 2 s apart',
      'no links to evidence',
      'no timekeepers',
      'flight 1',
    ]);
  });
});

function setupWith(declared: ReturnType<typeof design>) {
  return { id: null, from: null, change: null, design: declared, overrides: [] };
}

describe('the allowance', () => {
  const judgeAll = (rules: Challenge, flights: readonly Flight[], rulings: readonly FlightRuling[] = []) =>
    judge(rules, [contender('a', { flights, rulings })], { now: '2027-06-01', frozen: null })
      .entries.get('a')
      ?.flights.map(({ status, reason }) => [status, reason]);

  it('is used up in the order of the numbers, by every flight but a void one', () => {
    const flights = [
      flight(4, 40),
      flight(1, 40, { withdrawn: true }),
      flight(2, 40),
      flight(3, 40),
      flight(5, 40, on('2027-05-10')),
    ];
    expect(judgeAll(flying({ flightsPerDay: 2 }), flights, [accepted(2, { verdict: 'void' })])).toEqual([
      ['withdrawn', 'taken back by the builder'],
      ['void', 'ruled void: it does not count'],
      ['provisional', null],
      ['ineligible', 'flight 3 of 2027-05-09; 2 a day are allowed'],
      ['provisional', null],
    ]);
  });

  it('may be one of all flights together', () => {
    const flights = [flight(1, 40), flight(2, 40, on('2027-06-10')), flight(3, 40, on('2027-07-10'))];
    expect(judgeAll(flying({ flights: 2 }), flights)?.at(-1)).toEqual([
      'ineligible',
      'flight 3 of the entry; 2 in all are allowed',
    ]);
  });
});

describe('the honour roll', () => {
  const rules = challenge({ target: { time: 40, label: null } });

  it('takes the official time with no tolerance, of counted flights', () => {
    expect(judgeOne(rules, flight(1, 40), accepted(1)).reachedTarget).toBe(true);
    expect(judgeOne(rules, flight(1, 39.99), accepted(1)).reachedTarget).toBe(false);
    expect(judgeOne(rules, flight(1, 60)).reachedTarget).toBe(false);
  });

  it('looks at the time before any cap', () => {
    const capped = { ...rules, flying: { ...noFlyingRules, maximum: 30 } };
    expect(judgeOne(capped, flight(1, 40), accepted(1))).toMatchObject({ score: 30, reachedTarget: true });
  });
});
