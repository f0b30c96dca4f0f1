import { describe, expect, it } from 'vitest';
import { placeIfAccepted } from '../../../src/almanac/awaiting/if-accepted.ts';
import type { Contender } from '../../../src/contest/contender.ts';
import { judge } from '../../../src/contest/judge.ts';
import type { Challenge } from '../../../src/model/challenge.ts';
import { challenge, figureCondition } from '../../contest/invented-challenge.ts';
import {
  accepted,
  acceptedContender,
  contender,
  figure,
  figures,
  flight,
  on,
} from '../../contest/invented-contender.ts';

// Places counted by hand from the times beside each check; no source outside.

const today = '2027-06-01';

function placeOf(
  rules: Challenge,
  contenders: readonly Contender[],
  entry: string,
  number: number,
): ReturnType<typeof placeIfAccepted> {
  const byEntry = new Map(contenders.map((one) => [one.entry.id, one]));
  const result = judge(rules, contenders, { now: today, frozen: null });
  return placeIfAccepted(rules, byEntry, result, entry, number, today);
}

const fifty = acceptedContender('a', [flight(1, 50)]);
const forty = acceptedContender('b', [flight(1, 40)]);
const field = [fifty, forty];

describe('the place an acceptance would bring', () => {
  it('is the first place for an entry that had none', () => {
    expect(placeOf(challenge(), [...field, contender('c', { flights: [flight(1, 45)] })], 'c', 1)).toEqual({
      before: null,
      after: 2,
    });
  });

  it('is the place the entry has, where the flight is not its best', () => {
    const slower = contender('c', { flights: [flight(1, 45), flight(2, 20)], rulings: [accepted(1)] });
    expect(placeOf(challenge(), [...field, slower], 'c', 2)).toEqual({ before: 2, after: 2 });
  });

  it('takes each flight by itself', () => {
    const two = contender('c', { flights: [flight(1, 60), flight(2, 30)] });
    expect(placeOf(challenge(), [...field, two], 'c', 2)).toEqual({ before: null, after: 3 });
  });

  it('is shared with an equal score, unless a tie-break parts them', () => {
    const equal = contender('c', { flights: [flight(1, 50, on('2027-05-20'))] });
    expect(placeOf(challenge(), [...field, equal], 'c', 1)?.after).toBe(1);
    const earlier = challenge({ tieBreaks: [{ kind: 'earlier-flight' }] });
    // The other fifty seconds were flown on 9 May.
    expect(placeOf(earlier, [...field, equal], 'c', 1)?.after).toBe(2);
  });

  it('counts a flight again whose acceptance lapsed', () => {
    const lapsed = contender('c', {
      flights: [flight(1, 55)],
      rulings: [accepted(1, { seal: '1-ffffffffffffffff' })],
    });
    expect(placeOf(challenge(), [...field, lapsed], 'c', 1)).toEqual({ before: null, after: 1 });
  });

  it('is none where no acceptance could make the flight count', () => {
    const late = contender('c', { flights: [flight(1, 60, on('2027-11-01'))] });
    expect(placeOf(challenge(), [...field, late], 'c', 1)).toBeNull();
    expect(placeOf(challenge(), field, 'nobody', 1)).toBeNull();
  });

  it('is there for a limit missed inside the measuring error, and not for one missed clearly', () => {
    const rules = challenge({ eligibility: [figureCondition('span', 'at least 2.4 m', 'length')] });
    const small = (span: number) =>
      contender('c', { flights: [flight(1, 45)], figures: figures(figure('span', 'm', span, 0.006)) });
    // 2 × 6 mm allow for 10 mm and not for 20 mm.
    expect(placeOf(rules, [small(2.39)], 'c', 1)).toEqual({ before: null, after: 1 });
    expect(placeOf(rules, [small(2.38)], 'c', 1)).toBeNull();
  });
});
