import { describe, expect, it } from 'vitest';
import { judge } from '../../src/contest/judge.ts';
import type { Challenge, Scoring, TieBreak } from '../../src/model/challenge.ts';
import {
  bestFlight,
  challenge,
  factCondition,
  figureCondition,
  noFlyingRules,
} from './invented-challenge.ts';
import {
  accepted,
  acceptedContender,
  contender,
  figure,
  figures,
  flight,
  on,
  seconds,
  setup,
} from './invented-contender.ts';

const now = { now: '2027-06-01', frozen: null };

function scored(changes: Partial<Scoring>, rest: Partial<Challenge> = {}): Challenge {
  return challenge({ ...rest, scoring: { ...bestFlight, ...changes } });
}

function places(rules: Challenge, contenders: Parameters<typeof judge>[1]) {
  return judge(rules, contenders, now).standings.map(({ place, entry, tieBreak }) => [
    place,
    entry,
    tieBreak,
  ]);
}

// Expected values are worked out by hand.
describe('the methods of scoring', () => {
  const three = [flight(1, 10), flight(2, 30), flight(3, 20)];

  it('best takes the longest flight', () => {
    const [first] = judge(scored({}), [acceptedContender('a', three)], now).standings;
    expect(first).toMatchObject({ score: 30, flights: [2] });
    expect(first?.u).toBeCloseTo(Math.sqrt(0.01 + 0.01 / 12), 12);
  });

  it('sum takes the best so many, u is the root sum of squares', () => {
    const [first] = judge(
      scored({ method: 'sum', flights: 2 }),
      [acceptedContender('a', three)],
      now,
    ).standings;
    expect(first).toMatchObject({ score: 50, flights: [2, 3] });
    expect(first?.u).toBeCloseTo(Math.sqrt(2 * (0.01 + 0.01 / 12)), 12);
  });

  it('mean divides by what the rules ask, also where flights are missing', () => {
    const mean = scored({ method: 'mean', flights: 3 });
    const [first, second] = judge(
      mean,
      [acceptedContender('a', three), acceptedContender('b', [flight(1, 40)])],
      now,
    ).standings;
    expect(first).toMatchObject({ entry: 'a', score: 20 });
    expect(second).toMatchObject({ entry: 'b', score: 13.333, flights: [1] });
    expect(second?.u).toBeCloseTo(Math.sqrt(0.01 + 0.01 / 12) / 3, 12);
  });

  it('a maximum caps a flight and takes its uncertainty away', () => {
    const capped = challenge({ flying: { ...noFlyingRules, maximum: 25 } });
    const judged = judge(capped, [acceptedContender('a', three)], now);
    expect(judged.standings[0]).toMatchObject({ score: 25, u: 0, flights: [2] });
    expect(judged.entries.get('a')?.flights.map(({ score }) => score)).toEqual([10, 25, 20]);
  });

  it('of flights at the maximum the accepted, then the lower number is used; the longest is still the best', () => {
    const capped = scored({ provisional: 'ranked' }, { flying: { ...noFlyingRules, maximum: 5 } });
    const entry = contender('a', { flights: three, rulings: [accepted(3)] });
    const judged = judge(capped, [entry], now);
    expect(judged.standings[0]).toMatchObject({ flights: [3], provisional: false });
    expect(judged.entries.get('a')?.bestCounted).toBe(2);
  });

  it('a scale multiplies score and uncertainty: 30 s × (3.6 m / 2.4 m)^0.5 = 36.742 s', () => {
    const rules = scored({ scale: { by: 'span', reference: 2.4, power: 0.5 } });
    const entry = acceptedContender('a', three, { figures: figures(figure('span', 'm', 3.6)) });
    const [first] = judge(rules, [entry], now).standings;
    expect(first?.score).toBe(36.742);
    expect(first?.u).toBeCloseTo(Math.sqrt(0.01 + 0.01 / 12) * Math.sqrt(1.5), 12);
  });

  it('a flight that cannot be scaled is ineligible and says why', () => {
    const rules = scored({ scale: { by: 'span', reference: 2.4, power: 0.5 } });
    const entry = acceptedContender('a', three, {
      figures: figures({ id: 'span', unit: 'm', absent: "needs the wing's span" }),
    });
    expect(judge(rules, [entry], now).entries.get('a')?.flights[0]).toMatchObject({
      status: 'ineligible',
      reason: "cannot be scaled by the span: needs the wing's span",
      score: null,
    });
  });

  it('a half of a thousandth rounds up: a mean of 10.0 and 10.1 over 8 flights of a sum is 2.513', () => {
    const rules = scored({ method: 'mean', flights: 8 });
    // (10.0 + 10.1) / 8 = 2.5125
    const [first] = judge(rules, [acceptedContender('a', [flight(1, 10), flight(2, 10.1)])], now).standings;
    expect(first?.score).toBe(2.513);
  });
});

describe('tie-breaks', () => {
  const next: TieBreak = { kind: 'next-best-flight' };
  const largerSpan: TieBreak = { kind: 'figure', figure: 'span', prefers: 'larger' };
  const lighter: TieBreak = { kind: 'figure', figure: 'flying-mass', prefers: 'smaller' };
  const earlier: TieBreak = { kind: 'earlier-flight' };
  const spanned = (id: string, span: number, u: number, times: readonly number[] = [40]) =>
    acceptedContender(
      id,
      times.map((time, index) => flight(index + 1, time)),
      { figures: figures(figure('span', 'm', span, u)) },
    );

  it('next best flights decide one after another; who has none left loses', () => {
    const rules = challenge({ tieBreaks: [next] });
    const flown = (id: string, times: readonly number[]) =>
      acceptedContender(
        id,
        times.map((time, index) => flight(index + 1, time)),
      );
    expect(places(rules, [flown('a', [40]), flown('b', [30, 40, 20]), flown('c', [40, 30, 25])])).toEqual([
      [1, 'c', 'next-best-flight'],
      [2, 'b', 'next-best-flight'],
      [3, 'a', 'next-best-flight'],
    ]);
  });

  it('a measured figure decides only beyond twice the uncertainty of the difference', () => {
    const rules = challenge({ tieBreaks: [largerSpan] });
    // 2·√(0.006² + 0.008²) = 0.02 m
    expect(places(rules, [spanned('a', 3, 0.006), spanned('b', 3.021, 0.008)])).toEqual([
      [1, 'b', 'larger span'],
      [2, 'a', 'larger span'],
    ]);
    expect(places(rules, [spanned('a', 3, 0.006), spanned('b', 3.019, 0.008)])).toEqual([
      [1, 'a', null],
      [1, 'b', null],
    ]);
  });

  it('an unbroken chain of neighbours stays equal, whatever its ends', () => {
    const rules = challenge({ tieBreaks: [largerSpan] });
    const chain = [3, 3.01, 3.02, 3.5].map((span, index) => spanned(`e${index}`, span, 0.005));
    expect(places(rules, chain)).toEqual([
      [1, 'e3', 'larger span'],
      [2, 'e0', 'larger span'],
      [2, 'e1', 'larger span'],
      [2, 'e2', 'larger span'],
    ]);
  });

  it('who lacks the figure comes last', () => {
    const rules = challenge({ tieBreaks: [lighter] });
    const weighed = acceptedContender('b', [flight(1, 40)], {
      figures: figures(figure('flying-mass', 'kg', 9)),
    });
    expect(places(rules, [acceptedContender('a', [flight(1, 40)]), weighed])).toEqual([
      [1, 'b', 'smaller flying-mass'],
      [2, 'a', 'smaller flying-mass'],
    ]);
  });

  it('of three equals the middle one names the step that parted it from above', () => {
    const rules = challenge({ tieBreaks: [next, largerSpan] });
    expect(
      places(rules, [spanned('a', 3, 0.001, [40, 20]), spanned('b', 2, 0.001), spanned('c', 1, 0.001)]),
    ).toEqual([
      [1, 'a', 'next-best-flight'],
      [2, 'b', 'next-best-flight'],
      [3, 'c', 'larger span'],
    ]);
  });

  describe('the earlier flight', () => {
    const rules = challenge({ tieBreaks: [earlier] });
    const flownOn = (id: string, ...when: Parameters<typeof on>) =>
      acceptedContender(id, [flight(1, 40, on(...when))]);

    it('is the one of the earlier calendar date', () => {
      expect(places(rules, [flownOn('a', '2027-05-10'), flownOn('b', '2027-05-09')])).toEqual([
        [1, 'b', 'earlier flight'],
        [2, 'a', 'earlier flight'],
      ]);
    });

    it('goes by the instant where both state an offset, across the date line', () => {
      // 00:30 at +14:00 on the 10th is 10:30 UTC on the 9th; 23:30 at -12:00 on the 9th is 11:30 UTC on the 10th.
      expect(
        places(rules, [flownOn('a', '2027-05-09', '23:30', -720), flownOn('b', '2027-05-10', '00:30', 840)]),
      ).toEqual([
        [1, 'b', 'earlier flight'],
        [2, 'a', 'earlier flight'],
      ]);
    });

    it('cannot be told on one day where one of them states no offset', () => {
      expect(
        places(rules, [flownOn('a', '2027-05-09', '18:00', 60), flownOn('b', '2027-05-09', '09:00')]),
      ).toEqual([
        [1, 'a', null],
        [1, 'b', null],
      ]);
    });

    it('leaves equal what runs in a circle', () => {
      // c is before a by date, a before b by instant, and b level with c.
      const circle = [
        flownOn('a', '2027-05-10', '00:30', 840),
        flownOn('b', '2027-05-09', '23:30', -720),
        flownOn('c', '2027-05-09'),
      ];
      expect(places(rules, circle).map(([place]) => place)).toEqual([1, 1, 1]);
    });

    it('is the day on which a sum was complete', () => {
      const sum = scored({ method: 'sum', flights: 2 }, { tieBreaks: [earlier] });
      const a = acceptedContender('a', [flight(1, 40, on('2027-05-01')), flight(2, 40, on('2027-06-01'))]);
      const b = acceptedContender('b', [flight(1, 40, on('2027-05-20')), flight(2, 40, on('2027-05-21'))]);
      expect(places(sum, [a, b])[0]).toEqual([1, 'b', 'earlier flight']);
    });
  });
});

describe('provisional flights', () => {
  const one = contender('one', { flights: [flight(1, 30), flight(2, 44.2)], rulings: [accepted(1)] });
  const two = contender('two', { flights: [flight(1, 50)] });
  const three = acceptedContender('three', [flight(1, 44.2)]);

  it('kept apart are claims, listed where they differ from the score, the longest first', () => {
    const judged = judge(challenge(), [one, two, three], now);
    expect(judged.standings.map(({ entry, score }) => [entry, score])).toEqual([
      ['three', 44.2],
      ['one', 30],
    ]);
    expect(judged.claims).toEqual([
      { entry: 'two', score: 50, flights: [1] },
      { entry: 'one', score: 44.2, flights: [2] },
    ]);
    expect(judged.unplaced).toEqual([{ entry: 'two', reason: 'no counted flight' }]);
    expect(judged.entries.get('two')).toMatchObject({ bestCounted: null, bestProvisional: 1 });
  });

  it('no claim is made by a provisional flight that changes nothing', () => {
    const entry = contender('a', { flights: [flight(1, 30), flight(2, 20)], rulings: [accepted(1)] });
    expect(judge(challenge(), [entry], now).claims).toEqual([]);
  });

  it('ranked have places, accepted before provisional among equal scores', () => {
    const judged = judge(scored({ provisional: 'ranked' }), [one, two, three], now);
    expect(
      judged.standings.map(({ place, entry, provisional, tieBreak }) => [
        place,
        entry,
        provisional,
        tieBreak,
      ]),
    ).toEqual([
      [1, 'two', true, null],
      [2, 'three', false, 'provisional'],
      [3, 'one', true, 'provisional'],
    ]);
    expect(judged.claims).toEqual([]);
  });
});

describe('who has no place', () => {
  const rulings = [accepted(1)];
  const flights = [flight(1, 40)];

  it('is told why', () => {
    const judged = judge(
      challenge(),
      [
        contender('a', { flights, rulings, withdrawn: { date: '2027-05-20', reason: 'sold' } }),
        contender('b', { flights, rulings, disqualified: { reason: 'x', by: 'otter', date: '2027-05-20' } }),
        contender('c'),
      ],
      now,
    );
    expect(judged.unplaced).toEqual([
      { entry: 'a', reason: 'withdrawn' },
      { entry: 'b', reason: 'disqualified' },
      { entry: 'c', reason: 'no counted flight' },
    ]);
    expect(judged.standings).toEqual([]);
    expect(judged.entries.get('a')?.flights[0]?.status).toBe('accepted');
  });

  it('makes no claim after a withdrawal or a disqualification', () => {
    const judged = judge(
      challenge(),
      [contender('a', { flights, withdrawn: { date: null, reason: null } })],
      now,
    );
    expect(judged.claims).toEqual([]);
  });
});

describe('timing error', () => {
  // u of one watch rounded to 0.1 s is √(0.01 + 0.01/12) = 0.10408 s; twice the root sum of squares of two is 0.2944 s.
  it('joins scores that differ by at most 2·√(u₁² + u₂²), both ways', () => {
    const entries = [41.7, 41.5, 41.4, 41.2].map((time, index) =>
      acceptedContender(`e${index}`, [flight(1, time)]),
    );
    const near = judge(challenge(), entries, now).standings.map(({ entry, withinTimingErrorOf }) => [
      entry,
      withinTimingErrorOf,
    ]);
    expect(near).toEqual([
      ['e0', ['e1']],
      ['e1', ['e0', 'e2']],
      ['e2', ['e1', 'e3']],
      ['e3', ['e2']],
    ]);
  });
});

describe('divisions', () => {
  const rules = challenge({
    divisions: [
      { id: 'free', name: 'Free flight', conditions: [factCondition('control', 'free')] },
      { id: 'grand', name: 'Grand', conditions: [figureCondition('span', 'at least 4 m', 'length')] },
    ],
  });
  const grand = figures(figure('span', 'm', 4.2));
  const small = figures(figure('span', 'm', 3));

  it('have each a table of its own, with its own places', () => {
    const judged = judge(
      rules,
      [
        acceptedContender('a', [flight(1, 50)], { figures: small }),
        acceptedContender('b', [flight(1, 40)], { figures: grand }),
        acceptedContender('c', [flight(1, 30)], {
          figures: grand,
          setups: [setup(null, null, { control: 'guided' })],
        }),
      ],
      now,
    );
    const table = (id: string) =>
      judged.divisions.get(id)?.map(({ place, entry, score }) => [place, entry, score]);
    expect(table('free')).toEqual([
      [1, 'a', 50],
      [2, 'b', 40],
    ]);
    expect(table('grand')).toEqual([
      [1, 'b', 40],
      [2, 'c', 30],
    ]);
    expect(judged.standings.map(({ entry, divisions }) => [entry, divisions])).toEqual([
      ['a', ['free']],
      ['b', ['free', 'grand']],
      ['c', ['grand']],
    ]);
  });

  it('score only the flights whose setup meets them, when an aircraft changes in mid-season', () => {
    const entry = acceptedContender(
      'a',
      [flight(1, 30, on('2027-05-09')), flight(2, 50, on('2027-06-10')), flight(3, 20, on('2027-06-09'))],
      {
        setups: [setup(null, null), setup('b', '2027-06-10', { control: 'guided' })],
        figures: (id) => (id === 'b' ? grand : small),
      },
    );
    const judged = judge(rules, [entry], now);
    expect(judged.divisions.get('free')).toMatchObject([{ score: 30, flights: [1] }]);
    expect(judged.divisions.get('grand')).toMatchObject([{ score: 50, flights: [2] }]);
    expect(judged.standings).toMatchObject([{ score: 50, divisions: ['free', 'grand'] }]);
    expect(judged.entries.get('a')?.flights.map((one) => one.setup)).toEqual([null, 'b', null]);
    expect(judged.entries.get('a')?.headlineSetup).toBe('b');
  });

  it('of an entry without a place are those its headline setup would belong to', () => {
    const judged = judge(rules, [contender('a', { figures: grand })], now);
    expect(judged.entries.get('a')?.divisions).toEqual(['free', 'grand']);
  });
});

describe('the setup of a flight', () => {
  const setups = [setup(null, null), setup('b', '2027-05-01'), setup('c', '2027-06-01')] as const;
  const setupOf = (day: string, named?: string | null) =>
    judge(
      challenge(),
      [contender('a', { setups, flights: [flight(1, 40, { ...on(day), setup: named })] })],
      now,
    ).entries.get('a')?.flights[0]?.setup;

  it('is the latest whose day is not after the flight’s own date, unless the flight names one', () => {
    expect(setupOf('2027-04-30')).toBeNull();
    expect(setupOf('2027-05-01')).toBe('b');
    expect(setupOf('2027-06-02')).toBe('c');
    expect(setupOf('2027-06-02', 'b')).toBe('b');
    expect(setupOf('2027-06-02', null)).toBeNull();
  });

  it('of an entry without flights is the latest for its headline', () => {
    expect(judge(challenge(), [contender('a', { setups })], now).entries.get('a')?.headlineSetup).toBe('c');
  });
});

describe('a flight’s own mass', () => {
  it('is what limits see, and figures are worked out anew only for such a flight', () => {
    const rules = challenge({ eligibility: [figureCondition('flying-mass', 'at most 650 g', 'mass')] });
    let asked = 0;
    const mass = { ...seconds(0.7), kind: 'mass' as const };
    const entry = contender('a', {
      flights: [flight(1, 40), flight(2, 40, { mass })],
      figures: figures(figure('flying-mass', 'kg', 0.64)),
      figuresAtFlight: (one) => {
        asked += 1;
        return figures(figure('flying-mass', 'kg', one.mass?.value ?? 0));
      },
    });
    const judged = judge(rules, [entry], now).entries.get('a');
    expect(judged?.flights.map(({ status, reason }) => [status, reason])).toEqual([
      ['provisional', null],
      ['ineligible', 'the flying mass of 700 g is above the limit of at most 650 g'],
    ]);
    expect(asked).toBe(1);
  });
});
