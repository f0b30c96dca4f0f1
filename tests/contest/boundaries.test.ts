import { describe, expect, it } from 'vitest';
import { judge } from '../../src/contest/judge.ts';
import type { Challenge } from '../../src/model/challenge.ts';
import type { Flight } from '../../src/model/entry.ts';
import { bestFlight, challenge, factCondition, figureCondition } from './invented-challenge.ts';
import { accepted, contender, figure, figures, flight, on, setup } from './invented-contender.ts';

// Kiritimati keeps UTC+14:00, Pago Pago UTC-11:00 (IANA time zones Pacific/Kiritimati and Pacific/Pago_Pago).
const east = 14 * 60;
const west = -11 * 60;
const when = { now: '2027-12-01', frozen: null };

function statusIn(rules: Challenge, flown: Flight) {
  const judged = judge(rules, [contender('a', { flights: [flown], rulings: [accepted(1)] })], when);
  return judged.entries.get('a')?.flights[0]?.status;
}

describe('the last and the first day, on both sides of the date line', () => {
  // 23:59 at +14:00 on the closing day is 09:59 UTC of it; 00:01 at -11:00 on the day after is 11:01 UTC of that day.
  it.each([
    ['2027-10-31', '23:59', east, 'accepted'],
    ['2027-11-01', '00:01', west, 'outside-dates'],
    // 23:59 at -11:00 on the closing day is already 10:59 UTC of the day after, and still counts.
    ['2027-10-31', '23:59', west, 'accepted'],
    // 00:01 at +14:00 on the day after is still 10:01 UTC of the closing day, and does not.
    ['2027-11-01', '00:01', east, 'outside-dates'],
    // 00:01 at +14:00 on the opening day is still 10:01 UTC of the day before, and counts.
    ['2027-03-01', '00:01', east, 'accepted'],
    // 23:59 at -11:00 on the day before is already 10:59 UTC of the opening day, and does not.
    ['2027-02-28', '23:59', west, 'outside-dates'],
  ] as const)('%s %s at %i minutes east is %s', (day, clock, offset, status) => {
    expect(statusIn(challenge(), flight(1, 40, on(day, clock, offset)))).toBe(status);
  });
});

describe('the window of a round, on both sides of the date line', () => {
  const rules = challenge({
    scoring: { ...bestFlight, method: 'rounds' },
    rounds: [{ id: 'r1', maximum: 60, flyOff: false, from: '2027-06-05', to: '2027-06-06' }],
  });

  it.each([
    ['2027-06-04', '23:59', west, 'ineligible'],
    ['2027-06-05', '00:01', east, 'accepted'],
    ['2027-06-06', '23:59', west, 'accepted'],
    ['2027-06-06', '23:59', east, 'accepted'],
    ['2027-06-07', '00:01', east, 'ineligible'],
  ] as const)('%s %s at %i minutes east is %s', (day, clock, offset, status) => {
    expect(statusIn(rules, flight(1, 40, { ...on(day, clock, offset), round: 'r1' }))).toBe(status);
  });
});

describe('an aircraft that changes in mid-season', () => {
  // As first written 2.5 m and free; from the first of June 2.3 m and guided.
  const changing = (flown: Flight) =>
    contender('a', {
      flights: [flown],
      rulings: [accepted(1)],
      setups: [setup(null, null), setup('clipped', '2027-06-01', { control: 'guided' })],
      figures: (id) => figures(figure('span', 'm', id === 'clipped' ? 2.3 : 2.5)),
    });
  const rules = challenge({
    divisions: [
      { id: 'free', name: 'Free', conditions: [factCondition('control', 'free')] },
      { id: 'guided', name: 'Guided', conditions: [factCondition('control', 'guided')] },
    ],
  });
  const limited = { ...rules, eligibility: [figureCondition('span', 'at least 2.4 m', 'length')] };

  it.each([
    ['the day before the change', on('2027-05-31'), 'accepted', ['free']],
    ['the very day of it, with no setup named', on('2027-06-01'), 'ineligible', ['guided']],
    ['after it, in the setup as first written', { ...on('2027-07-01'), setup: null }, 'accepted', ['free']],
    ['before it, in the setup to come', { ...on('2027-05-01'), setup: 'clipped' }, 'ineligible', ['guided']],
  ] as const)('%s', (_, flown, status, divisions) => {
    const entry = changing(flight(1, 40, flown));
    expect(judge(limited, [entry], when).entries.get('a')?.flights[0]?.status).toBe(status);
    expect(judge(rules, [entry], when).standings[0]?.divisions).toEqual(divisions);
  });
});

describe('a place after an edit', () => {
  it('goes to the next when an accepted flight is edited, and comes back with a new ruling', () => {
    const second = contender('b', { flights: [flight(1, 39)], rulings: [accepted(1)] });
    const edited = new Map([[1, '1-1111111111111111']]);
    const table = (ruled: string) =>
      judge(
        challenge(),
        [
          contender('a', {
            flights: [flight(1, 41)],
            rulings: [accepted(1, { seal: ruled })],
            seals: edited,
          }),
          second,
        ],
        when,
      );
    const lapsed = table('1-0000000000000000');
    expect(lapsed.standings.map(({ entry }) => entry)).toEqual(['b']);
    expect(lapsed.claims).toEqual([{ entry: 'a', score: 41, flights: [1] }]);
    expect(table('1-1111111111111111').standings.map(({ entry }) => entry)).toEqual(['a', 'b']);
  });
});
