import { expect, test } from 'vitest';
import { rulingRuns } from '../../src/components/ruling-runs.ts';
import type { FlightRuling } from '../../src/model/ruling.ts';

/** An acceptance of a flight, as an organiser would write it. */
function accepted(flight: number, differs: Partial<FlightRuling> = {}): FlightRuling {
  return {
    flight,
    verdict: 'accepted',
    by: 'otter',
    second: null,
    date: '2027-05-12',
    received: null,
    time: null,
    reason: null,
    seen: ['launch'],
    kept: null,
    seal: null,
    asRuled: {},
    earlier: [],
    ...differs,
  };
}

const flights = (rulings: readonly FlightRuling[]) =>
  rulingRuns(rulings, ({ verdict }) => verdict === 'accepted').map((run) => run.map(({ flight }) => flight));

test('three plain acceptances and more are one line, two stay two', () => {
  expect(flights([1, 2, 3].map((flight) => accepted(flight)))).toEqual([[1, 2, 3]]);
  expect(flights([1, 2].map((flight) => accepted(flight)))).toEqual([[1], [2]]);
});

test('what needed a decision stands by itself and parts the line', () => {
  const rulings = [1, 2, 3, 4, 5, 6, 7].map((flight) =>
    accepted(flight, flight === 4 ? { verdict: 'refused' } : {}),
  );
  expect(flights(rulings)).toEqual([[1, 2, 3], [4], [5, 6, 7]]);
});

test('another organiser or another list of what was seen begins another line', () => {
  expect(
    flights([
      ...[1, 2, 3].map((one) => accepted(one)),
      ...[4, 5, 6].map((one) => accepted(one, { by: 'heron' })),
    ]),
  ).toEqual([
    [1, 2, 3],
    [4, 5, 6],
  ]);
  expect(flights([accepted(1), accepted(2), accepted(3, { seen: [] })])).toEqual([[1], [2], [3]]);
});

test('no ruling, no line', () => {
  expect(flights([])).toEqual([]);
});
