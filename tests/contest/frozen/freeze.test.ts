import { describe, expect, it } from 'vitest';
import { challengeAsFrozen } from '../../../src/contest/frozen/challenge-as-frozen.ts';
import { differsFromFrozen } from '../../../src/contest/frozen/differs-from-frozen.ts';
import { freeze } from '../../../src/contest/frozen/freeze.ts';
import { underNamesOfToday } from '../../../src/contest/frozen/under-names-of-today.ts';
import { judge } from '../../../src/contest/judge.ts';
import { challengeState } from '../../../src/contest/rules/state.ts';
import { challenge, figureCondition } from '../invented-challenge.ts';
import {
  accepted,
  acceptedContender,
  contender,
  figure,
  figures,
  flight,
  on,
} from '../invented-contender.ts';

const rules = challenge({
  target: { time: 40, label: null },
  eligibility: [figureCondition('span', 'at least 2.4 m', 'length')],
  divisions: [
    { id: 'grand', name: 'Grand', conditions: [figureCondition('span', 'at least 4 m', 'length')] },
  ],
});
const spanned = (span: number) => ({ figures: figures(figure('span', 'm', span)) });
const contenders = [
  acceptedContender('c', [flight(1, 20)], spanned(5)),
  acceptedContender('a', [flight(1, 40, on('2027-05-09')), flight(2, 41.7, on('2027-06-09'))], spanned(3.2)),
  acceptedContender('b', [flight(1, 41.7, on('2027-06-08'))], spanned(4.1)),
  contender('d', { flights: [flight(1, 60), flight(2, 30)], rulings: [accepted(2)], ...spanned(4.3) }),
  contender('e', { flights: [flight(1, 70)], ...spanned(2) }),
];
const final = judge(rules, contenders, { now: '2027-12-01', frozen: null });
const frozen = freeze(rules, final, contenders, { generator: '1.0.0', closed: '2027-12-01' });

describe('a frozen result', () => {
  it('keeps places, scores and what parted them, without uncertainties', () => {
    expect(frozen.standings.map(({ place, entry, score }) => [place, entry, score])).toEqual([
      [1, 'a', 41.7],
      [1, 'b', 41.7],
      [3, 'd', 30],
      [4, 'c', 20],
    ]);
    expect(frozen.standings[0]).not.toHaveProperty('u');
    expect(frozen.divisions).toEqual({
      grand: [
        { place: 1, entry: 'b', score: 41.7 },
        { place: 2, entry: 'd', score: 30 },
        { place: 3, entry: 'c', score: 20 },
      ],
    });
    expect(frozen.claims).toEqual([{ entry: 'd', score: 60, flights: [1] }]);
    expect(frozen.unplaced).toEqual([{ entry: 'e', reason: 'no counted flight' }]);
  });

  it('keeps the records: the longest time, of equal ones the earlier; the largest span that reached the target', () => {
    expect(frozen.records).toEqual([
      { kind: 'best-time', division: null, value: 41.7, entry: 'b', flight: 1, date: '2027-06-08' },
      { kind: 'span', division: null, value: 4.1, entry: 'b', flight: 1, date: '2027-06-08' },
      { kind: 'best-time', division: 'grand', value: 41.7, entry: 'b', flight: 1, date: '2027-06-08' },
      { kind: 'span', division: 'grand', value: 4.1, entry: 'b', flight: 1, date: '2027-06-08' },
    ]);
  });

  it('keeps every flight with its status and the facts of the best counted one', () => {
    expect(frozen.entries.map(({ id }) => id)).toEqual(['a', 'b', 'c', 'd', 'e']);
    expect(frozen.entries[0]).toMatchObject({
      builders: ['builder-of-a'],
      flights: [
        { number: 1, date: '2027-05-09', official: 40, status: 'accepted', reason: null },
        { number: 2, date: '2027-06-09', official: 41.7, status: 'accepted', reason: null },
      ],
      facts: { setup: 'none', span: 3.2 },
    });
    expect(frozen.entries[4]?.facts).toEqual({});
  });

  it('survives a trip through JSON', () => {
    expect(JSON.parse(JSON.stringify(frozen))).toEqual(frozen);
  });
});

describe('judging with a frozen result', () => {
  const shorter = acceptedContender('a', [flight(1, 40), flight(2, 12), flight(3, 99)], spanned(3.2));
  const later = [
    shorter,
    acceptedContender('b', [flight(1, 41.7)], {
      ...spanned(4.1),
      withdrawn: { date: '2028-01-01', reason: 'sold' },
    }),
    acceptedContender('newcomer', [flight(1, 300)], spanned(3)),
  ];
  const thawed = judge(rules, later, { now: '2028-02-01', frozen });

  it('is final and keeps the places, also of entries left out or withdrawn since', () => {
    expect(thawed.state).toBe('final');
    expect(thawed.standings.map(({ u: _, ...standing }) => standing)).toEqual(frozen.standings);
    expect(thawed.claims).toEqual(frozen.claims);
    expect(thawed.unplaced).toEqual(frozen.unplaced);
    expect(
      thawed.divisions.get('grand')?.map(({ place, entry, score }) => ({ place, entry, score })),
    ).toEqual(frozen.divisions.grand);
    expect(thawed.entries.get('b')?.unplaced).toBeNull();
  });

  it('keeps official times and statuses, and what follows from them', () => {
    const a = thawed.entries.get('a');
    expect(a?.flights[1]).toMatchObject({
      status: 'accepted',
      official: { seconds: 41.7, explanation: '41.7 s in the final result' },
      date: '2027-06-09',
      reachedTarget: true,
    });
    expect(a).toMatchObject({ bestCounted: 2, unplaced: null });
  });

  it('keeps who reached the target when the target is changed afterwards', () => {
    const harder = { ...rules, target: { time: 42, label: null } };
    const reached = (result: typeof frozen) =>
      judge(harder, later, { now: '2028-02-01', frozen: result })
        .entries.get('a')
        ?.flights.map(({ reachedTarget }) => reachedTarget);
    expect(frozen.challenge).toMatchObject({ state: 'final', target: 40 });
    // 40 s and 41.7 s against 40 s; the flight of 99 s came later.
    expect(reached(frozen)).toEqual([true, true, false]);
    // A result that does not tell its target is measured against today's.
    const { target: _, ...untold } = frozen.challenge;
    expect(reached({ ...frozen, challenge: untold })).toEqual([false, false, false]);
  });

  it('counts no flight and no entry that came later', () => {
    expect(thawed.entries.get('a')?.flights[2]).toMatchObject({
      status: 'provisional',
      reason: 'not part of the final result',
      counted: false,
      reachedTarget: false,
    });
    expect(thawed.entries.get('newcomer')).toMatchObject({
      bestCounted: null,
      unplaced: 'not part of the final result',
    });
  });

  it('keeps a flight that its entry no longer tells of', () => {
    const cut = acceptedContender('a', [flight(1, 40)], spanned(3.2));
    const a = judge(rules, [cut], { now: '2028-02-01', frozen }).entries.get('a');
    expect(a?.flights.map(({ number }) => number)).toEqual([1, 2]);
    expect(a?.flights[1]).toMatchObject({
      date: '2027-06-09',
      status: 'accepted',
      official: { seconds: 41.7 },
      score: 41.7,
      counted: true,
      reachedTarget: true,
    });
    expect(a?.bestCounted).toBe(2);
  });

  it('keeps the flights of an entry that is there no more', () => {
    const c = judge(rules, [], { now: '2028-02-01', frozen }).entries.get('c');
    expect(c).toMatchObject({ bestCounted: 1, unplaced: null, divisions: ['grand'] });
    expect(c?.flights.map(({ number, official, score }) => [number, official.seconds, score])).toEqual([
      [1, 20, 20],
    ]);
  });

  it('keeps its places where a default or a rule moved every figure, limit and time since', () => {
    // As a default of another value would: every span is half of what it was, below the limit of 2.4 m.
    const halved = contenders.map((one) => ({
      ...one,
      modelFigures: () => spanned(1.2).figures,
      figuresAtFlight: () => spanned(1.2).figures,
    }));
    const coarser = { ...rules, timing: { ...rules.timing, resolution: '5' as const } };
    const later = judge(coarser, halved, { now: '2028-02-01', frozen });
    expect(later.standings.map(({ u: _, ...standing }) => standing)).toEqual(frozen.standings);
    expect(later.entries.get('a')?.flights.map(({ status, official }) => [status, official.seconds])).toEqual(
      [
        ['accepted', 40],
        ['accepted', 41.7],
      ],
    );
    // Without the frozen result, nothing of it would be left.
    expect(judge(coarser, halved, { now: '2028-02-01', frozen: null }).standings).toEqual([]);
  });

  it('scores the frozen time where the entry tells another one now', () => {
    const changed = acceptedContender('a', [flight(1, 40), flight(2, 55)], spanned(3.2));
    const a = judge(rules, [changed], { now: '2028-02-01', frozen }).entries.get('a');
    expect(a?.flights[1]).toMatchObject({ official: { seconds: 41.7 }, score: 41.7 });
  });

  it('keeps dates and target of the challenge, whatever its file says later', () => {
    const moved = {
      ...rules,
      opens: '2026-01-01',
      closes: '2028-01-01',
      target: { time: 90, label: 'Late' },
    };
    expect(challengeAsFrozen(moved, frozen)).toMatchObject({
      opens: '2027-03-01',
      closes: '2027-10-31',
      target: { time: 40 },
    });
  });

  it('tells where a result worked out now would differ, and nothing where it would not', () => {
    const now = (entries: typeof contenders, changes: Partial<typeof rules> = {}) =>
      differsFromFrozen(
        judge({ ...rules, ...changes }, entries, { now: '2028-02-01', frozen: null }),
        frozen,
      );
    expect(now(contenders)).toEqual([]);
    // Whole seconds, rounded down: 41.7 s would be 41 s, twice.
    expect(now(contenders, { timing: { ...rules.timing, resolution: '1' } })).toEqual([
      'a 1 with 41.7 s, now 1 with 41 s',
      'b 1 with 41.7 s, now 1 with 41 s',
      'flight 2 of a 41.7 s and accepted, now 41 s and accepted',
      'flight 1 of b 41.7 s and accepted, now 41 s and accepted',
    ]);
    expect(now(contenders.filter(({ entry }) => entry.id !== 'c'))).toEqual([
      'c 4 with 20 s, now without a place',
      'c with one flight, now not read',
    ]);
  });

  it('gives back what was frozen where nothing changed', () => {
    const same = judge(rules, contenders, { now: '2028-02-01', frozen });
    expect({ ...same, state: 'closed' }).toEqual(final);
  });
});

describe('an entry that was renamed', () => {
  const renamed = acceptedContender('alder', [flight(1, 40), flight(2, 41.7)], spanned(3.2));
  const today = [{ ...renamed.entry, formerly: ['a'] }, ...contenders.slice(2).map(({ entry }) => entry)];
  const named = underNamesOfToday(frozen, today);

  it('keeps place, flights and records under its name of today', () => {
    expect(named.standings[0]).toMatchObject({
      place: 1,
      entry: 'alder',
      score: 41.7,
      withinTimingErrorOf: frozen.standings[0]?.withinTimingErrorOf,
    });
    expect(named.entries.map(({ id }) => id)).toEqual(['alder', 'b', 'c', 'd', 'e']);
    expect(named.entries[0]?.flights).toEqual(frozen.entries[0]?.flights);
    const result = judge(rules, [renamed], { now: '2028-02-01', frozen: named });
    expect(result.entries.get('alder')).toMatchObject({ bestCounted: 2, unplaced: null });
    expect(result.entries.has('a')).toBe(false);
  });

  it('leaves its old name to an entry that bears it today', () => {
    const both = [...today, { id: 'a', formerly: [] }];
    expect(underNamesOfToday(frozen, both)).toEqual(frozen);
  });

  it('is itself where nobody was renamed', () => {
    expect(
      underNamesOfToday(
        frozen,
        contenders.map(({ entry }) => entry),
      ),
    ).toBe(frozen);
  });
});

describe('the life of a challenge', () => {
  it.each([
    ['2027-02-28', false, 'announced'],
    ['2027-03-01', false, 'open'],
    ['2027-10-31', false, 'open'],
    ['2027-11-01', false, 'closed'],
    ['2030-01-01', false, 'closed'],
    ['2030-01-01', true, 'final'],
    ['2027-05-01', true, 'final'],
  ] as const)('on %s, frozen %s, is %s', (today, isFrozen, state) => {
    expect(challengeState(rules, today, isFrozen)).toBe(state);
  });
});
