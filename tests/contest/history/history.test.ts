import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Contender } from '../../../src/contest/contender.ts';
import { freeze } from '../../../src/contest/frozen/freeze.ts';
import type { FrozenResult } from '../../../src/contest/frozen/frozen.ts';
import type { AcceptedFlight } from '../../../src/contest/history/accepted-flight.ts';
import { type History, historyOf } from '../../../src/contest/history/history.ts';
import { judge } from '../../../src/contest/judge.ts';
import type { Challenge } from '../../../src/model/challenge.ts';
import { challenge, factCondition, figureCondition } from '../invented-challenge.ts';
import {
  accepted,
  acceptedContender,
  contender,
  design,
  figure,
  figures,
  flight,
  on,
  setup,
} from '../invented-contender.ts';
import { noHistory } from './no-history.ts';

// An invented season, and what happened in it, told by hand: no expected list below is worked out by the code.

const rules = challenge({
  target: { time: 40, label: 'Forty' },
  milestones: [
    { time: 60, label: 'A minute' },
    { time: 20, label: 'Twenty' },
    { time: 45, label: 'Forty-five' },
  ],
  divisions: [
    { id: 'grand', name: 'Grand', conditions: [figureCondition('span', 'at least 3 m', 'length')] },
    { id: 'guided', name: 'Guided', conditions: [factCondition('control', 'guided')] },
  ],
});

function spanned(span: number, u = 0.002) {
  return { figures: figures(figure('span', 'm', span, u)) };
}

const season = [
  acceptedContender(
    'reed',
    [
      flight(1, 18, on('2027-04-02')),
      flight(2, 25, on('2027-04-20')),
      flight(3, 40, on('2027-06-01')),
      flight(4, 39.9, on('2027-06-02')),
    ],
    spanned(2.5),
  ),
  acceptedContender(
    'sedge',
    [flight(1, 22, on('2027-04-10')), flight(2, 47.5, on('2027-06-20')), flight(3, 47.5, on('2027-07-01'))],
    spanned(3.25, 0.004),
  ),
  acceptedContender(
    'teasel',
    [flight(1, 47.5, on('2027-06-20')), flight(2, 12, on('2027-05-01'))],
    spanned(2),
  ),
];

function told(contenders: readonly Contender[], under: Challenge = rules): History {
  return historyOf(under, judge(under, contenders, { now: '2027-09-01', frozen: null }), contenders, null);
}

function afterwards(
  contenders: readonly Contender[],
  frozen: FrozenResult,
  under: Challenge = rules,
): History {
  return historyOf(under, judge(under, contenders, { now: '2028-02-01', frozen }), contenders, frozen);
}

function close(contenders: readonly Contender[]): FrozenResult {
  const result = judge(rules, contenders, { now: '2027-12-01', frozen: null });
  return freeze(rules, result, contenders, { generator: '1.0.0', closed: '2027-12-01' });
}

function named({ entry, number, flown }: AcceptedFlight): string {
  return `${flown.date} ${entry} ${number}`;
}

function timeSteps(history: History) {
  return history.time.map(({ flight: one, value, gain }) => [named(one), value, gain]);
}

describe('the progress of the best time', () => {
  it('has each flight that beat all before it, and by how much', () => {
    // 18, then 22, 25, 40, 47.5; sedge's 47.5 of the same day equals teasel's, whose number is the lower.
    expect(timeSteps(told(season))).toEqual([
      ['2027-04-02 reed 1', 18, null],
      ['2027-04-10 sedge 1', 22, 4],
      ['2027-04-20 reed 2', 25, 3],
      ['2027-06-01 reed 3', 40, 15],
      ['2027-06-20 teasel 1', 47.5, 7.5],
    ]);
  });

  it('goes by the instants of one day where they are stated, whatever the names', () => {
    const day = [
      acceptedContender('a', [flight(1, 30, on('2027-05-01', '18:00', 60))]),
      acceptedContender('b', [flight(1, 30, on('2027-05-01', '17:30', 60))]),
      acceptedContender('c', [flight(1, 20, on('2027-05-01', '15:00', 0))]),
    ];
    // 15:00 UTC was before 16:30 UTC, which was before 17:00 UTC.
    expect(timeSteps(told(day))).toEqual([
      ['2027-05-01 c 1', 20, null],
      ['2027-05-01 b 1', 30, 10],
    ]);
  });

  it('goes by the number, then by the entry, where a time of day has no offset', () => {
    const day = [
      acceptedContender('b', [flight(1, 31, on('2027-05-01', '09:00', 60))]),
      acceptedContender('a', [flight(2, 32, on('2027-05-01', '18:00')), flight(1, 30, on('2027-05-01'))]),
    ];
    expect(timeSteps(told(day))).toEqual([
      ['2027-05-01 a 1', 30, null],
      ['2027-05-01 b 1', 31, 1],
      ['2027-05-01 a 2', 32, 1],
    ]);
  });

  it('takes no flight that waits, and none of an entry withdrawn or disqualified', () => {
    const withOthers = [
      ...season,
      contender('waits', {
        flights: [flight(1, 90, on('2027-03-02')), flight(2, 19, on('2027-04-03'))],
        rulings: [accepted(2)],
      }),
      acceptedContender('gone', [flight(1, 80, on('2027-03-02'))], {
        withdrawn: { date: '2027-08-01', reason: 'sold' },
      }),
      acceptedContender('out', [flight(1, 85, on('2027-03-02'))], {
        disqualified: { date: '2027-08-01', by: 'otter', reason: 'not its builder' },
      }),
    ];
    expect(timeSteps(told(withOthers)).map(([step]) => step)).toEqual([
      '2027-04-02 reed 1',
      '2027-04-03 waits 2',
      '2027-04-10 sedge 1',
      '2027-04-20 reed 2',
      '2027-06-01 reed 3',
      '2027-06-20 teasel 1',
    ]);
  });

  it('goes by official times where scores are capped or scaled', () => {
    const handicap = challenge({
      flying: { ...rules.flying, maximum: 30 },
      scoring: { ...rules.scoring, scale: { by: 'span', reference: 2, power: 1 } },
    });
    expect(timeSteps(told(season, handicap)).at(-1)).toEqual(['2027-06-20 teasel 1', 47.5, 7.5]);
  });
});

describe('the progress of the span', () => {
  it('has the larger aircraft that reached the target, with the uncertainty of each span', () => {
    const steps = told(season).span;
    expect(steps.map(({ flight: one, value, gain }) => [named(one), value, gain])).toEqual([
      ['2027-06-01 reed 3', 2.5, null],
      ['2027-06-20 sedge 2', 3.25, 0.75],
    ]);
    expect(steps.map(({ flight: one }) => one.span?.u)).toEqual([0.002, 0.004]);
  });

  it('takes any accepted flight where there is no target', () => {
    const free = { ...rules, target: null };
    expect(told(season, free).span.map(({ flight: one }) => named(one))).toEqual([
      '2027-04-02 reed 1',
      '2027-04-10 sedge 1',
    ]);
  });

  it('goes by the setup that was flown', () => {
    const twoWings = acceptedContender(
      'moth',
      [flight(1, 50, on('2027-05-01')), flight(2, 50, on('2027-07-01'))],
      {
        setups: [setup(null, null), setup('long', '2027-06-01')],
        figures: (id) => figures(figure('span', 'm', id === null ? 2 : 2.6)),
      },
    );
    expect(told([twoWings]).span.map(({ value }) => value)).toEqual([2, 2.6]);
  });
});

describe('the honour roll', () => {
  it('has everyone who reached the target, in the order of first reaching it', () => {
    // 40 s is reached, 39.9 s is not.
    expect(
      told(season).honour.map(({ entry, first, best, times }) => [entry, named(first), named(best), times]),
    ).toEqual([
      ['reed', '2027-06-01 reed 3', '2027-06-01 reed 3', 1],
      ['teasel', '2027-06-20 teasel 1', '2027-06-20 teasel 1', 1],
      ['sedge', '2027-06-20 sedge 2', '2027-06-20 sedge 2', 2],
    ]);
  });

  it('is empty where nobody reached the target, and where there is none', () => {
    expect(told(season, { ...rules, target: { time: 50, label: null } }).honour).toEqual([]);
    expect(told(season, { ...rules, target: null }).honour).toEqual([]);
  });
});

describe('the milestones', () => {
  it('stand by length, with who passed each first and how many aircraft did', () => {
    expect(
      told(season).milestones.map(({ label, first, entries }) => [
        label,
        first === null ? null : named(first),
        entries,
      ]),
    ).toEqual([
      ['Twenty', '2027-04-10 sedge 1', 3],
      ['Forty-five', '2027-06-20 teasel 1', 2],
      ['A minute', null, 0],
    ]);
  });
});

describe('the records', () => {
  it('stand for all, then for each division; one that nobody flew in has none', () => {
    expect(
      told(season).records.map(({ kind, division, value, entry, flight: number, date, u }) => [
        kind,
        division,
        value,
        `${date} ${entry} ${number}`,
        u,
      ]),
    ).toEqual([
      ['best-time', null, 47.5, '2027-06-20 teasel 1', null],
      ['span', null, 3.25, '2027-06-20 sedge 2', 0.004],
      ['best-time', 'grand', 47.5, '2027-06-20 sedge 2', null],
      ['span', 'grand', 3.25, '2027-06-20 sedge 2', 0.004],
    ]);
  });

  it('go to the division of the setup that was flown', () => {
    const radio = acceptedContender(
      'moth',
      [flight(1, 50, on('2027-05-01')), flight(2, 55, on('2027-07-01'))],
      {
        setups: [
          setup(null, null),
          { ...setup('radio', '2027-06-01'), design: design({ control: 'guided' }) },
        ],
        ...spanned(2),
      },
    );
    expect(
      told([radio])
        .records.filter(({ kind }) => kind === 'best-time')
        .map(({ division, value }) => [division, value]),
    ).toEqual([
      [null, 55],
      ['guided', 55],
    ]);
  });
});

describe('personal bests', () => {
  it('take all aircraft of a builder together, the longest first', () => {
    const builders = [{ handle: 'amarsh', name: null, club: null, junior: false }];
    const [reed, sedge, teasel] = season.map(({ entry }) => entry);
    const owned: Contender[] = [
      { ...season[0]!, entry: { ...reed!, builders } },
      { ...season[1]!, entry: { ...sedge!, builders: [...builders, { ...builders[0]!, handle: 'bwren' }] } },
      { ...season[2]!, entry: { ...teasel!, builders: [{ ...builders[0]!, handle: 'cfinch' }] } },
    ];
    expect(
      told(owned).personalBests.map(({ builder, best, first, improvements, flights }) => [
        builder,
        named(best),
        named(first),
        improvements,
        flights,
      ]),
    ).toEqual([
      // 12, then 47.5: of the equal bests the one flown first.
      ['cfinch', '2027-06-20 teasel 1', '2027-05-01 teasel 2', 1, 2],
      // 18, 22, 25, 40, 47.5: four improvements in seven flights.
      ['amarsh', '2027-06-20 sedge 2', '2027-04-02 reed 1', 4, 7],
      ['bwren', '2027-06-20 sedge 2', '2027-04-10 sedge 1', 1, 3],
    ]);
  });
});

describe('a challenge in which nothing has been accepted', () => {
  it('has no history', () => {
    const waiting = contender('waits', { flights: [flight(1, 90)] });
    expect(told([waiting], challenge())).toEqual(noHistory);
    expect(told([], challenge())).toEqual(noHistory);
  });
});

describe('the history of a final challenge', () => {
  const clocked = [
    ...season,
    acceptedContender('a', [flight(1, 10, on('2027-03-20', '18:00', -210))], spanned(2)),
    acceptedContender('b', [flight(1, 8, on('2027-03-20', '17:00', -210))], spanned(2)),
    contender('waits', { flights: [flight(1, 90, on('2027-03-02'))], ...spanned(4) }),
    acceptedContender('gone', [flight(1, 80)], { withdrawn: { date: '2027-08-01', reason: null } }),
  ];
  const frozen = JSON.parse(JSON.stringify(close(clocked))) as FrozenResult;
  const told1 = (history: History) => ({
    time: timeSteps(history),
    span: history.span.map(({ flight: one, value }) => [named(one), value]),
    honour: history.honour.map(({ entry, first, times }) => [entry, named(first), times]),
    milestones: history.milestones.map(({ label, entries }) => [label, entries]),
    records: history.records,
    bests: history.personalBests.map(({ builder, best, flights }) => [builder, named(best), flights]),
  });

  it('is that of the day before it was frozen', () => {
    expect(told1(afterwards(clocked, frozen))).toEqual(told1(told(clocked)));
    expect(timeSteps(afterwards(clocked, frozen)).slice(0, 2)).toEqual([
      ['2027-03-20 b 1', 8, null],
      ['2027-03-20 a 1', 10, 2],
    ]);
  });

  it('stays, whatever becomes of entries, rulings, target and divisions', () => {
    const later = [
      acceptedContender('newcomer', [flight(1, 300, on('2027-03-03'))], spanned(6)),
      acceptedContender('reed', [flight(1, 200, on('2027-03-01')), flight(3, 5)], {
        ...spanned(9),
        withdrawn: { date: '2028-01-01', reason: 'sold' },
      }),
      acceptedContender('gone', [flight(1, 80)]),
    ];
    const changed = { ...rules, target: { time: 1, label: null }, divisions: [] };
    const { records, ...before } = told1(told(clocked));
    const { records: kept, ...after } = told1(afterwards(later, frozen, changed));
    expect(after).toEqual(before);
    expect(kept.map(({ u: _, ...record }) => record)).toEqual(records.map(({ u: _, ...record }) => record));
  });

  it('knows the uncertainty of a span only while that span is the frozen one', () => {
    const remeasured = clocked.map((one) =>
      one.entry.id === 'sedge' ? { ...one, modelFigures: spannedModel(3.3) } : one,
    );
    const us = (contenders: readonly Contender[]) =>
      afterwards(contenders, frozen).span.map(({ flight: one }) => one.span);
    expect(us(clocked).at(-1)).toEqual({ value: 3.25, u: 0.004 });
    expect(us(remeasured).at(-1)).toEqual({ value: 3.25, u: null });
  });

  it('tells of a result that keeps neither spans nor times of day what its records and dates tell', () => {
    const older: FrozenResult = {
      ...frozen,
      entries: frozen.entries.map((entry) => ({
        ...entry,
        flights: entry.flights.map(({ span: _, flown: __, ...rest }) => rest),
      })),
    };
    const history = afterwards(clocked, older);
    expect(history.span.map(({ flight: one, value }) => [named(one), value])).toEqual([
      ['2027-06-20 sedge 2', 3.25],
    ]);
    // Without times of day the day's flights of one number stand by their entries' ids: b's 8 s no longer leads.
    expect(timeSteps(history)[0]).toEqual(['2027-03-20 a 1', 10, null]);
  });
});

function spannedModel(span: number): Contender['modelFigures'] {
  return () => figures(figure('span', 'm', span, 0.002));
}

describe('the order of the files', () => {
  it('does not matter', () => {
    const some = fc.array(
      fc.record({
        day: fc.integer({ min: 1, max: 3 }),
        hour: fc.option(fc.integer({ min: 0, max: 2 })),
        offset: fc.option(fc.constantFrom(-60, 0, 60)),
        time: fc.integer({ min: 38, max: 42 }),
      }),
      { maxLength: 5 },
    );
    fc.assert(
      fc.property(fc.array(some, { maxLength: 5 }), (aircraft) => {
        const contenders = aircraft.map((flights, index) =>
          acceptedContender(
            `e${index}`,
            flights.map(({ day, hour, offset, time }, number) =>
              flight(
                number + 1,
                time,
                on(`2027-05-0${day}`, hour === null ? null : `1${hour}:00`, hour === null ? null : offset),
              ),
            ),
            spanned(2 + (index % 2)),
          ),
        );
        const turned = [...contenders]
          .reverse()
          .map((one) => ({ ...one, entry: { ...one.entry, flights: [...one.entry.flights].reverse() } }));
        expect(told(turned)).toEqual(told(contenders));
      }),
      { seed: 20_270_501, numRuns: 150 },
    );
  });
});
