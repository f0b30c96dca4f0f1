import { describe, expect, it } from 'vitest';
import { compareRules } from '../../../src/contest/compare/compare-rules.ts';
import { variantsOf } from '../../../src/contest/compare/variants.ts';
import type { Challenge } from '../../../src/model/challenge.ts';
import { bestFlight, challenge, noFlyingRules } from '../invented-challenge.ts';
import { acceptedContender, contender, figure, figures, flight, seconds } from '../invented-contender.ts';

const now = '2027-06-01';

// Three entries; every expected place below is worked out by hand beside it.
const span = (value: number) => ({ figures: figures(figure('span', 'm', value)) });
const entries = [
  acceptedContender('a', [flight(1, 50), flight(2, 10)], span(4)),
  acceptedContender('b', [flight(1, 40), flight(2, 38)], span(1)),
  acceptedContender('c', [flight(1, 39.96), flight(2, 39)], span(1)),
];

function compared(option: string, choice: string, rules: Challenge = challenge(), all = entries) {
  const variants = variantsOf(rules, all, new Map([[option, [choice]]]));
  if ('fault' in variants) throw new Error(variants.fault);
  const [only, ...more] = compareRules(rules, all, variants, now).variants;
  expect(more).toEqual([]);
  return only;
}

function fault(option: string, choice: string, rules: Challenge = challenge()): string | null {
  const variants = variantsOf(rules, entries, new Map([[option, [choice]]]));
  return 'fault' in variants ? variants.fault : null;
}

describe('who moves under another rule', () => {
  it('the sum of two turns the table of the best flight round: 60, 78 and 78.9 s', () => {
    expect(compared('method', 'sum:2')).toMatchObject({
      id: 'method=sum:2',
      moved: [
        { entry: 'a', before: 1, after: 3 },
        { entry: 'c', before: 3, after: 1 },
      ],
      newlyShared: [],
    });
  });

  it('39.96 s to the nearest tenth is 40.0 s: a place that is newly shared', () => {
    expect(compared('round', 'nearest')).toMatchObject({
      moved: [{ entry: 'c', before: 3, after: 2 }],
      newlyShared: [{ place: 2, entries: ['b', 'c'] }],
    });
  });

  it('a cap of 39 s is reached by all three', () => {
    expect(compared('maximum', '39 s')?.newlyShared).toEqual([{ place: 1, entries: ['a', 'b', 'c'] }]);
  });

  it('a handicap by span^-0.5 with the reference 1 m halves the score of four metres', () => {
    const variant = compared('scale', 'span:-0.5');
    // 50 × 4^-0.5 = 25; b and c keep 40 and 39.9 (39.96 cut off to a tenth).
    expect(variant?.standings.map(({ entry, score }) => [entry, score])).toEqual([
      ['b', 40],
      ['c', 39.9],
      ['a', 25],
    ]);
  });

  it('the lowest watch of 41 and 30 s is 30 s', () => {
    const two = acceptedContender('d', [
      { ...flight(1, 41), watches: [seconds(45), seconds(30), seconds(45)] },
    ]);
    // The mean is 40 s and shares the second place with b.
    expect(compared('combine', 'lowest', challenge(), [...entries, two])?.moved).toContainEqual({
      entry: 'd',
      before: 2,
      after: 4,
    });
  });

  it('ranked, a flight that waits has a place; apart again, it drops out', () => {
    const waiting = [...entries, contender('w', { flights: [flight(1, 60)] })];
    expect(compared('provisional', 'ranked', challenge(), waiting)?.moved[0]).toEqual({
      entry: 'a',
      before: 1,
      after: 2,
    });
    const ranked = challenge({ scoring: { ...bestFlight, provisional: 'ranked' } });
    expect(compared('provisional', 'apart', ranked, waiting)?.moved[0]).toEqual({
      entry: 'w',
      before: 1,
      after: null,
    });
  });

  it('half the maxima of rounds fill what was not full', () => {
    const rounds = challenge({
      scoring: { ...bestFlight, method: 'rounds' },
      rounds: [{ id: 'r1', maximum: 60, flyOff: false, from: null, to: null }],
    });
    const flown = [50, 31].map((time, index) =>
      acceptedContender(`entry-${index}`, [flight(1, time, { round: 'r1' })]),
    );
    expect(compared('maximum', 'x0.5', rounds, flown)?.newlyShared).toEqual([
      { place: 1, entries: ['entry-0', 'entry-1'] },
    ]);
  });
});

describe('the variants', () => {
  it('leave out what the rules say already', () => {
    const rules = challenge({ flying: { ...noFlyingRules, maximum: 60 } });
    for (const [option, choice] of [
      ['method', 'best'],
      ['resolution', '0.1'],
      ['round', 'down'],
      ['combine', 'mean'],
      ['maximum', '1:00'],
      ['scale', 'none'],
      ['provisional', 'apart'],
    ] as const)
      expect(compared(option, choice, rules), option).toBeUndefined();
  });

  it('are the usual ones where none is asked for, without handicaps by figures that nobody has', () => {
    const variants = variantsOf(challenge(), entries, new Map());
    if ('fault' in variants) throw new Error(variants.fault);
    const ids = variants.map(({ id }) => id);
    expect(ids).toContain('method=mean:3');
    expect(ids).toContain('scale=span:-1');
    expect(ids.filter((id) => /rounds|wing-area/.test(id))).toEqual([]);
  });

  it('of a challenge nobody has entered move nobody', () => {
    const variants = variantsOf(challenge(), [], new Map());
    if ('fault' in variants) throw new Error(variants.fault);
    const { board, variants: told } = compareRules(challenge(), [], variants, now);
    expect(board).toEqual([]);
    expect(told.flatMap(({ moved, newlyShared }) => [...moved, ...newlyShared])).toEqual([]);
  });
});

describe('a choice that cannot be tried', () => {
  it.each([
    ['method', 'sum', /^--method does not know "sum"; it takes "best", "rounds", and "sum:3"/],
    ['method', 'mean:0', /a number from 1 to 99/],
    ['method', 'rounds', /^Rounds cannot be tried/],
    ['resolution', '0.2', /it takes 0\.01, 0\.1 and 1/],
    ['round', 'up', /"down" and "nearest"/],
    ['combine', 'mode', /"mean", "median" and "lowest"/],
    ['maximum', '-5 s', /"none" and times such as "120 s"/],
    ['scale', 'span', /a figure with a power other than 0/],
    ['scale', 'span:0', /a figure with a power other than 0/],
    ['scale', 'colour:1', /no entry has such a figure/],
    ['provisional', 'maybe', /"apart" and "ranked"/],
  ])('--%s %s is told what is taken', (option, choice, sentence) => {
    expect(fault(option, choice)).toMatch(sentence);
  });

  it('with rounds is a handicap, or a cap that is no share', () => {
    const rounds = challenge({ scoring: { ...bestFlight, method: 'rounds' } });
    expect(fault('scale', 'span:1', rounds)).toMatch(/takes none/);
    expect(fault('maximum', '60 s', rounds)).toMatch(/"x0\.5"/);
  });
});
