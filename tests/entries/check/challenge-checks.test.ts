import { describe, expect, it } from 'vitest';
import { allTold, challengeOf, smallestChallenge } from '../written.ts';

// What is checked is content format 1; the wording is this project's own. Places were counted by hand: the first line
// of front matter is line 2, the smallest challenge fills lines 2 to 4.

const more = (lines: string) => allTold(challengeOf(`${smallestChallenge}\n${lines}`));

describe('the dates of a challenge', () => {
  it('stand in order', () => {
    expect(more('report-by: 2027-10-30')).toEqual([
      '5:12 dates-out-of-order: `report-by` is 2027-10-30, before `closes` on 2027-10-31. Write a date that is not before it.\n(4:9 `closes` stands here)',
    ]);
    expect(
      more(
        'scoring: { method: rounds }\nrounds: [{ id: r1, maximum: 180 s, from: 2027-06-02, to: 2027-06-01 }]',
      ),
    ).toEqual([
      '6:58 dates-out-of-order: `to` in round r1 is 2027-06-01, before `from` on 2027-06-02. Write a date that is not before it.\n(6:42 `from` stands here)',
    ]);
  });

  it('may be one day', () => {
    expect(more('report-by: 2027-10-31\nfinal: 2027-10-31')).toEqual([]);
  });
});

describe('the day on which a result becomes final', () => {
  // 14 days after 14 November are 28 November, after 31 October 14 November: counted on a calendar.
  it('comes when it can no longer be protested', () => {
    expect(more('report-by: 2027-11-14\nfinal: 2027-11-27\nprotests: 14 days')).toEqual([
      '6:8 final-before-protests: `final` is 2027-11-27, but the result can be protested until 2027-11-28: 14 days from `report-by` on. Write a later day, or a shorter time for protests.\n-> 2027-11-28\n(7:11 `protests` stands here)',
    ]);
    expect(more('final: 2027-11-13\nprotests: 14 days')).toHaveLength(1);
  });

  it('may be the last day for protests', () => {
    expect(more('report-by: 2027-11-14\nfinal: 2027-11-28\nprotests: 14 days')).toEqual([]);
    expect(more('final: 2027-11-14\nprotests: 14 days')).toEqual([]);
  });

  it('may be any where no time for protests is set', () => {
    expect(more('final: 2027-10-31')).toEqual([]);
  });
});

describe('rounds', () => {
  it('go with the method rounds', () => {
    expect(more('rounds: [{ id: r1, maximum: 180 s }]')).toEqual([
      '5:1 rounds-not-used: `rounds` are given, but `scoring.method` is "best". Write `method: rounds` there, or take the rounds out.\n-> scoring: { method: rounds }',
    ]);
    expect(more('scoring: { method: rounds }')).toEqual([
      '5:20 rounds-missing: `scoring.method` is "rounds", but there are no rounds. Write them like `rounds: [{ id: r1, maximum: 180 s }]`, or another method.\n-> rounds: [{ id: r1, maximum: 180 s }]',
    ]);
  });

  it('know no other maximum and no scale', () => {
    expect(
      more(`scoring: { method: rounds, scale: { by: span, reference: 1 m, power: 1 } }
rounds: [{ id: r1, maximum: 180 s }]
flying: { maximum: 180 s }`),
    ).toEqual([
      '7:11 not-with-rounds: `flying.maximum` has no meaning with rounds: each round has a `maximum` of its own; take this one out.',
      '5:28 not-with-rounds: `scoring.scale` has no meaning with rounds: scores of rounds are not scaled; take it out.',
    ]);
  });

  it('and divisions have ids of their own', () => {
    expect(more('divisions: [{ id: free, name: Free }, { id: free, name: Freer }]')).toEqual([
      '5:45 duplicate-id: `id` in division free: two divisions are called "free". Write an id that no other has.\n(5:19 "free" stands here first)',
    ]);
  });
});

describe('a number of flights', () => {
  it('goes with sum and mean', () => {
    expect(more('scoring: { method: best, flights: 3 }')).toEqual([
      '5:26 flights-not-used: `scoring.flights` is "3", but the method "best" does not use it. Take it out, or write `method: sum` or `method: mean`.',
    ]);
    expect(more('scoring: { method: mean, flights: 3 }')).toEqual([]);
  });
});

describe('a figure in a rule', () => {
  it('is one there is', () => {
    expect(more('eligibility: { wing-loadin: at most 12 g/dm2 }')).toEqual([
      '5:16 unknown-figure: `eligibility.wing-loadin`: "wing-loadin" is not a figure. Write a figure of the model, such as span or flying-mass. Did you mean "wing-loading"?\n-> wing-loading',
    ]);
    expect(
      more('scoring: { scale: { by: spam, reference: 1 m, power: 1 } }').map((told) => told.slice(0, 20)),
    ).toEqual(['5:25 unknown-figure:']);
  });

  it('is one of the model', () => {
    expect(more('divisions: [{ id: a, name: A, energy-per-gram: at most 400 J/kg }]')).toEqual([
      '5:31 figure-not-of-model: `energy-per-gram` in division a: "energy-per-gram" is a figure of a flight; rules may use figures of the model only, so that places do not rest on places. Write a figure of the model, such as span or flying-mass.',
    ]);
  });

  it('has a limit in words, in a unit of its kind', () => {
    expect(more('eligibility: { span: 2.4 m }')).toEqual([
      '5:22 not-a-quantity: `eligibility.span`: "2.4 m" is not a limit. Write "at least", "at most", "more than" or "less than" before the value, or two values with "to" between them.',
    ]);
    expect(more('eligibility: { span: at least 2.4 kg }').map((told) => told.slice(0, 24))).toEqual(
      ['5:22 wrong-kind-of-unit: '].map((told) => told.slice(0, 24)),
    );
  });
});

describe('a step of the tie-break', () => {
  it('is one there is', () => {
    expect(more('tie-break: [next-best-flight, toss a coin]')).toEqual([
      '5:31 unknown-tie-break: item 2 of `tie-break`: "toss a coin" is not a step of a tie-break. Write next-best-flight, earlier flight, or larger or smaller and a figure of the model, such as larger span.',
    ]);
    expect(more('tie-break: larger spam')).toEqual([
      '5:12 unknown-figure: `tie-break`: "spam" is not a figure. Write a figure of the model, such as span or flying-mass. Did you mean "larger span"?\n-> larger span',
    ]);
  });
});

describe('a step of rounding', () => {
  it('is one that a watch can have', () => {
    expect(more('timing: { resolution: 0 s }')).toEqual([
      '5:23 impossible-value: `timing.resolution`: "0 s" is no step to which times are rounded. Write a step of 0.001 s to 60 s in whole milliseconds, such as 0.1 s.',
    ]);
  });
});
