import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Contender } from '../../src/contest/contender.ts';
import { judge } from '../../src/contest/judge.ts';
import type { Standing } from '../../src/contest/standing.ts';
import type { Challenge } from '../../src/model/challenge.ts';
import type { Flight } from '../../src/model/entry.ts';
import {
  bestFlight,
  challenge,
  factCondition,
  figureCondition,
  noFlyingRules,
} from './invented-challenge.ts';
import { accepted, contender, figure, figures, flight, on, setup } from './invented-contender.ts';

const now = { now: '2027-06-01', frozen: null };
const seed = 20270509;

/** One invented entry in plain numbers: times in tenths of a second, days of May, and how many flights are accepted. */
const season = fc.record({
  flights: fc.array(
    fc.record({
      tenths: fc.integer({ min: 10, max: 60 }),
      day: fc.integer({ min: 1, max: 3 }),
      zone: fc.constantFrom(null, -720, 0, 840),
      isAccepted: fc.boolean(),
      round: fc.constantFrom('r1', 'r2', 'fly-off'),
    }),
    { maxLength: 6 },
  ),
  span: fc.constantFrom<number>(2, 2.5, 2.51, 2.52, 3, 4),
  guided: fc.boolean(),
});
type Season = typeof season extends fc.Arbitrary<infer T> ? T : never;

const rules: fc.Arbitrary<Challenge> = fc
  .record({
    method: fc.constantFrom('best', 'sum', 'mean' as const),
    take: fc.integer({ min: 1, max: 3 }),
    provisional: fc.constantFrom('apart', 'ranked' as const),
    maximum: fc.constantFrom(null, 4),
    flightsPerDay: fc.constantFrom(null, 2),
  })
  .map(({ method, take, provisional, maximum, flightsPerDay }) =>
    challenge({
      scoring: { ...bestFlight, method, flights: take, provisional },
      flying: { ...noFlyingRules, maximum, flightsPerDay },
      eligibility: [figureCondition('span', 'at least 2.4 m', 'length')],
      divisions: [{ id: 'free', name: 'Free', conditions: [factCondition('control', 'free')] }],
      tieBreaks: [
        { kind: 'next-best-flight' },
        { kind: 'figure', figure: 'span', prefers: 'larger' },
        { kind: 'earlier-flight' },
      ],
    }),
  );

/** The same by rounds, with a fly-off; times go to 6 s, so that some fill a round and some do not. */
const byRounds: fc.Arbitrary<Challenge> = rules.map((rule) => ({
  ...rule,
  scoring: { ...rule.scoring, method: 'rounds' },
  flying: { ...rule.flying, maximum: null },
  rounds: ['r1', 'r2', 'fly-off'].map((id) => ({
    id,
    maximum: 4,
    flyOff: id === 'fly-off',
    from: null,
    to: null,
  })),
}));

const everyMethod = fc.oneof({ arbitrary: rules, weight: 2 }, { arbitrary: byRounds, weight: 1 });

function entryOf({ flights, span, guided }: Season, index: number, scale = 1): Contender {
  return contender(`entry-${index}`, {
    flights: flights.map(({ tenths, day, zone, round }, number) =>
      flight(number + 1, (tenths * scale) / 10, {
        ...on(`2027-05-0${day}`, zone === null ? null : '12:00', zone),
        round,
      }),
    ),
    rulings: flights.flatMap(({ isAccepted }, number) => (isAccepted ? [accepted(number + 1)] : [])),
    setups: [setup(null, null, { control: guided ? 'guided' : 'free' })],
    figures: figures(figure('span', 'm', span, 0.004)),
  });
}

function withFlights(one: Contender, flights: readonly Flight[]): Contender {
  return { ...one, entry: { ...one.entry, flights } };
}

/** Nobody without a place stands before one who has one. */
function placeOf(entry: string, table: readonly Standing[]): number {
  return table.find((row) => row.entry === entry)?.place ?? Number.POSITIVE_INFINITY;
}

function scoreIn(entry: string, table: readonly Standing[]): number {
  return table.find((row) => row.entry === entry)?.score ?? 0;
}

const field = fc.array(season, { minLength: 1, maxLength: 7 });

describe('laws of a contest', () => {
  it('the order of entries and flights never matters', () => {
    fc.assert(
      fc.property(everyMethod, field, (rule, seasons) => {
        const entries = seasons.map((one, index) => entryOf(one, index));
        const turned = [...entries]
          .reverse()
          .map((one) => withFlights(one, [...one.entry.flights].reverse()));
        expect(judge(rule, turned, now)).toEqual(judge(rule, entries, now));
      }),
      { seed, numRuns: 300 },
    );
  });

  it('one more flight, shorter than all before it, never lowers a place', () => {
    fc.assert(
      fc.property(everyMethod, field, fc.integer({ min: 1, max: 9 }), (rule, seasons, tenths) => {
        const entries = seasons.map((one, index) => entryOf(one, index));
        const [first, ...others] = entries;
        const [ofFirst] = seasons;
        if (first === undefined || ofFirst === undefined) return;
        const more = entryOf(
          {
            ...ofFirst,
            flights: [...ofFirst.flights, { tenths, day: 1, zone: null, isAccepted: true, round: 'r1' }],
          },
          0,
        );
        const place = (all: readonly Contender[]) => placeOf('entry-0', judge(rule, all, now).standings);
        expect(place([more, ...others])).toBeLessThanOrEqual(place(entries));
      }),
      { seed, numRuns: 300 },
    );
  });

  it('ten times all times is the same order', () => {
    fc.assert(
      fc.property(rules, field, (rule, seasons) => {
        const uncapped = { ...rule, flying: { ...rule.flying, maximum: null } };
        const order = (scale: number) =>
          judge(
            uncapped,
            seasons.map((one, index) => entryOf(one, index, scale)),
            now,
          ).standings.map(({ place, entry, tieBreak }) => [place, entry, tieBreak]);
        expect(order(10)).toEqual(order(1));
      }),
      { seed, numRuns: 200 },
    );
  });

  it('withdrawing a flight never raises a score or a claim', () => {
    fc.assert(
      fc.property(everyMethod, season, fc.nat({ max: 5 }), (rule, one, which) => {
        const whole = entryOf(one, 0);
        const less = withFlights(
          whole,
          whole.entry.flights.map((flown, index) =>
            index === which ? { ...flown, withdrawn: true } : flown,
          ),
        );
        const before = judge(rule, [whole], now);
        const after = judge(rule, [less], now);
        expect(after.standings[0]?.score ?? 0).toBeLessThanOrEqual(before.standings[0]?.score ?? 0);
        const highest = ({ claims, standings }: typeof before) =>
          claims[0]?.score ?? standings[0]?.score ?? 0;
        expect(highest(after)).toBeLessThanOrEqual(highest(before));
      }),
      { seed, numRuns: 300 },
    );
  });

  it('an entry that withdraws has no place, and costs nobody else theirs', () => {
    fc.assert(
      fc.property(everyMethod, field, (rule, seasons) => {
        const [first, ...others] = seasons.map((one, index) => entryOf(one, index));
        if (first === undefined) return;
        const gone = { ...first, entry: { ...first.entry, withdrawn: { date: '2027-05-20', reason: null } } };
        const before = judge(rule, [first, ...others], now);
        const after = judge(rule, [gone, ...others], now);
        expect(after.unplaced).toContainEqual({ entry: 'entry-0', reason: 'withdrawn' });
        for (const { entry, place } of before.standings.filter((row) => row.entry !== 'entry-0'))
          expect(placeOf(entry, after.standings)).toBeLessThanOrEqual(place);
      }),
      { seed, numRuns: 200 },
    );
  });

  it('an acceptance never lowers the entry it is given to', () => {
    fc.assert(
      fc.property(everyMethod, field, fc.nat({ max: 5 }), (rule, seasons, which) => {
        const [first, ...others] = seasons;
        if (first === undefined) return;
        const flights = first.flights.map((flown, index) =>
          index === which ? { ...flown, isAccepted: true } : flown,
        );
        const standings = (one: Season) =>
          judge(
            rule,
            [one, ...others].map((each, index) => entryOf(each, index)),
            now,
          ).standings;
        const [before, after] = [standings(first), standings({ ...first, flights })];
        expect(placeOf('entry-0', after)).toBeLessThanOrEqual(placeOf('entry-0', before));
        expect(scoreIn('entry-0', after)).toBeGreaterThanOrEqual(scoreIn('entry-0', before));
      }),
      { seed, numRuns: 300 },
    );
  });

  it('every entry stands in the table or is unplaced, once', () => {
    fc.assert(
      fc.property(everyMethod, field, (rule, seasons) => {
        const { standings, unplaced } = judge(
          rule,
          seasons.map((one, index) => entryOf(one, index)),
          now,
        );
        const all = [...standings, ...unplaced].map(({ entry }) => entry).sort();
        expect(all).toEqual(seasons.map((_, index) => `entry-${index}`));
      }),
      { seed, numRuns: 200 },
    );
  });

  it('two entries are inside timing error of each other, or neither is', () => {
    fc.assert(
      fc.property(everyMethod, field, (rule, seasons) => {
        const { standings } = judge(
          rule,
          seasons.map((one, index) => entryOf(one, index)),
          now,
        );
        for (const one of standings)
          for (const other of standings)
            expect(one.withinTimingErrorOf.includes(other.entry)).toBe(
              other.withinTimingErrorOf.includes(one.entry),
            );
      }),
      { seed, numRuns: 100 },
    );
  });
});

describe('a large contest', () => {
  it('of 1,000 entries with 5 flights each gives every one of them a place', () => {
    const many = Array.from({ length: 1000 }, (_, index) =>
      entryOf(
        {
          flights: [0, 1, 2, 3, 4].map((number) => ({
            tenths: 100 + ((index * 37 + number * 101) % 500),
            day: 1 + (number % 3),
            zone: 0,
            isAccepted: number !== 4,
            round: 'r1',
          })),
          span: 2.4 + (index % 7) / 10,
          guided: index % 3 === 0,
        },
        index,
      ),
    );
    const [rule] = fc.sample(rules, { numRuns: 1, seed });
    if (rule === undefined) throw new Error('no rules');
    expect(judge(rule, many, now).standings).toHaveLength(1000);
  });
});
