import { rank as rankOfD3 } from 'd3-array';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { judge } from '../../src/contest/judge.ts';
import type { Round } from '../../src/model/challenge.ts';
import { roundDecimal } from '../../src/quantities/decimal.ts';
import { parseQuantity } from '../../src/quantities/parse.ts';
import { bestFlight, challenge } from './invented-challenge.ts';
import { acceptedContender, flight } from './invented-contender.ts';

const now = { now: '2027-12-01', frozen: null };

function secondsIn(text: string): number {
  const parsed = parseQuantity(text, 'time');
  if (!parsed.ok) throw new Error(parsed.fault.message);
  return parsed.value.value;
}

// Published places of a contest scored by the best two of nine flights, times m:ss; the fifth column is the published
// score when the winner has 1000.
const published = [
  ['28:20', '27:45', 3365, 1, null],
  ['27:56', '27:52', 3348, 2, 994.95],
  ['27:00', '25:57', 3177, 3, 944.13],
  ['25:30', '25:10', 3040, 4, 903.42],
  ['25:13', '24:21', 2974, 5, 883.8],
  ['24:33', '24:12', 2925, 6, 869.24],
  ['23:47', '23:43', 2850, 7, 846.95],
  ['23:44', '23:37', 2841, 8, 844.28],
  ['21:18', '20:27', 2505, 9, 744.43],
  ['20:42', '20:24', 2466, 10, 732.84],
] as const;

describe('the best two of nine, as published', () => {
  const bestTwo = challenge({ scoring: { ...bestFlight, method: 'sum', flights: 2 } });
  // The other seven flights were shorter than the two that are published; here they are all of ten minutes.
  const entries = published.map(([first, second], index) =>
    acceptedContender(
      `entry-${index}`,
      [600, 600, secondsIn(second), 600, secondsIn(first), 600, 600, 600, 600].map((time, number) =>
        flight(number + 1, time),
      ),
    ),
  );
  const { standings } = judge(bestTwo, entries, now);

  it.each(published.map((row, index) => [index, row] as const))(
    'row %i has its total and its place',
    (index, row) => {
      const standing = standings.find(({ entry }) => entry === `entry-${index}`);
      expect(standing).toMatchObject({ score: row[2], place: row[3], flights: [5, 3] });
    },
  );

  it('gives the printed shares of the winner, rounded to the nearest hundredth (cut off, five rows would differ)', () => {
    const winner = standings[0]?.score ?? Number.NaN;
    const shares = standings.slice(1).map(({ score }) => (score / winner) * 1000);
    const printed = published.slice(1).map(([, , , , share]) => share);
    expect(shares.map((share) => roundDecimal(share, '0.01', 'nearest'))).toEqual(printed);
    const cut = shares.map((share) => roundDecimal(share, '0.01', 'down'));
    expect(cut.filter((share, index) => share !== printed[index])).toHaveLength(5);
  });
});

// Free-flight sporting code 3.1.8.b: fly-offs of 360 s, then 120 s more each time; an event as published flew the first
// round to 240 s, six to 180 s and a first fly-off to 300 s.
describe('seven rounds and fly-offs, as published', () => {
  const round = (id: string, maximum: number, flyOff = false): Round => ({
    id,
    maximum,
    flyOff,
    from: null,
    to: null,
  });
  const rounds = [
    round('r1', 240),
    ...[2, 3, 4, 5, 6, 7].map((number) => round(`r${number}`, 180)),
    round('flyoff-1', 300, true),
    round('flyoff-2', 420, true),
  ];
  const rules = challenge({ scoring: { ...bestFlight, method: 'rounds' }, rounds });
  const flown = (id: string, times: readonly number[]) =>
    acceptedContender(
      id,
      times.map((time, index) => flight(index + 1, time, { round: rounds[index]?.id ?? null })),
    );
  const { standings } = judge(
    rules,
    [
      flown('c', [240, 180, 180, 180, 180, 180, 178, 300, 420]),
      flown('b', [251, 190, 180, 181, 200, 199, 180, 304, 308]),
      flown('a', [240, 180, 185, 180, 180, 180, 180, 300, 359]),
    ],
    now,
  );

  it('a full score is 1320 s', () => {
    expect(standings.map(({ entry, score }) => [entry, score])).toEqual([
      ['a', 1320],
      ['b', 1320],
      ['c', 1318],
    ]);
  });

  it('359 s beats 308 s in the second fly-off, 1318 is third', () => {
    expect(standings.map(({ place }) => place)).toEqual([1, 2, 3]);
    expect(standings.map(({ tieBreak }) => tieBreak)).toEqual(['flyoff-2', 'flyoff-2', null]);
  });

  it('ignores fly-off flights of who had no full score', () => {
    expect(standings[2]?.flights).toEqual([1, 2, 3, 4, 5, 6, 7]);
  });

  it('adds no uncertainty for times at a maximum, and lists nobody as inside timing error for it', () => {
    expect(standings[0]?.u).toBe(0);
    expect(standings[0]?.withinTimingErrorOf).toEqual([]);
  });

  it('shares the place where the last fly-off is level', () => {
    const level = judge(
      rules,
      [
        flown('a', [240, 180, 180, 180, 180, 180, 180, 300, 359]),
        flown('b', [240, 180, 180, 180, 180, 180, 180, 300, 359]),
      ],
      now,
    );
    expect(level.standings.map(({ place }) => place)).toEqual([1, 1]);
  });

  it('refuses a flight without a round, of an unknown round, or outside its dates', () => {
    const dated = challenge({
      scoring: { ...bestFlight, method: 'rounds' },
      rounds: [{ id: 'r1', maximum: 180, flyOff: false, from: '2027-06-01', to: '2027-06-02' }],
    });
    const judged = judge(
      dated,
      [
        acceptedContender('a', [
          flight(1, 100),
          flight(2, 100, { round: 'r9' }),
          flight(3, 100, { round: 'r1' }),
        ]),
      ],
      now,
    );
    expect(judged.entries.get('a')?.flights.map(({ status, reason }) => [status, reason])).toEqual([
      ['ineligible', 'names no round'],
      ['ineligible', 'names the round "r9", which this challenge does not have'],
      ['ineligible', 'flown on 2027-05-09, before round r1 began on 2027-06-01'],
    ]);
  });
});

describe('shared places', () => {
  it('are 1, 2, 2, 4', () => {
    const entries = [50, 40, 40, 30].map((time, index) =>
      acceptedContender(`entry-${index}`, [flight(1, time)]),
    );
    expect(judge(challenge(), entries, now).standings.map(({ place }) => place)).toEqual([1, 2, 2, 4]);
  });

  it('agree with the ranks of d3-array, an independent library, for any scores', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 12 }), { minLength: 1, maxLength: 20 }), (times) => {
        const entries = times.map((time, index) => acceptedContender(`entry-${index}`, [flight(1, time)]));
        const { standings } = judge(challenge(), entries, now);
        const places = times.map(
          (_, index) => standings.find(({ entry }) => entry === `entry-${index}`)?.place,
        );
        const ranks = [...rankOfD3(times, (a: number, b: number) => b - a)].map((zeroBased) => zeroBased + 1);
        expect(places).toEqual(ranks);
      }),
      { seed: 20270509, numRuns: 200 },
    );
  });
});
