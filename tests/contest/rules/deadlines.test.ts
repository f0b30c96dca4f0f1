import { describe, expect, it } from 'vitest';
import { deadlines, protestsUntil } from '../../../src/contest/rules/deadlines.ts';
import { challenge } from '../invented-challenge.ts';

// What is checked is content format 1. Days were counted by hand on a calendar. A day has 86,400 s.

const day = 86_400;

describe('the last day for protests', () => {
  it('is counted from the day by which flights are handed in', () => {
    const dated = challenge({ reportBy: '2027-11-14', protests: 14 * day });
    expect(protestsUntil(dated)).toBe('2027-11-28');
  });

  it('is counted from the closing day where no other day is set', () => {
    expect(protestsUntil(challenge({ closes: '2027-10-31', protests: 14 * day }))).toBe('2027-11-14');
  });

  it('gives the whole of a day that has begun', () => {
    expect(protestsUntil(challenge({ closes: '2027-10-31', protests: 36 * 3600 }))).toBe('2027-11-02');
  });

  it('does not exist where the rules set no time', () => {
    expect(protestsUntil(challenge())).toBeNull();
  });
});

describe('the dates of a challenge', () => {
  it('come in their order with what happens', () => {
    const dated = challenge({ reportBy: '2027-11-14', protests: 14 * day, final: '2027-12-01' });
    expect(deadlines(dated)).toEqual([
      { kind: 'opens', date: '2027-03-01' },
      { kind: 'closes', date: '2027-10-31' },
      { kind: 'report-by', date: '2027-11-14' },
      { kind: 'protests', date: '2027-11-28' },
      { kind: 'final', date: '2027-12-01' },
    ]);
  });

  it('are in order also where the result would be final before protests end', () => {
    const dated = challenge({ protests: 60 * day, final: '2027-12-01' });
    expect(deadlines(dated).map(({ kind }) => kind)).toEqual(['opens', 'closes', 'final', 'protests']);
  });

  it('leave out what the rules do not set', () => {
    expect(deadlines(challenge()).map(({ kind }) => kind)).toEqual(['opens', 'closes']);
  });
});
