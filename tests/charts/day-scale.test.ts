import { describe, expect, it } from 'vitest';
import { dayScale } from '../../src/charts/day-scale.ts';

function ticks(first: string, last: string): string[] {
  return dayScale(first, last, 0, 100).ticks.map(({ date }) => date);
}

describe('a scale of days', () => {
  it('places days by how many have passed', () => {
    // By the calendar: 1 to 31 May are 30 days; the 16th is 15 of them on.
    const { at } = dayScale('2027-05-01', '2027-05-31', 10, 70);
    expect([at('2027-05-01'), at('2027-05-16'), at('2027-05-31')]).toEqual([10, 40, 70]);
  });

  it('counts the 29th of February in a leap year', () => {
    // 28 February to 1 March is two days in 2028.
    expect(dayScale('2028-02-28', '2028-03-01', 0, 100).at('2028-02-29')).toBe(50);
  });

  it('has a tick at the first of each month of a season', () => {
    expect(ticks('2027-03-20', '2027-07-01')).toEqual([
      '2027-04-01',
      '2027-05-01',
      '2027-06-01',
      '2027-07-01',
    ]);
  });

  it('begins with the first day where that is the first of a month', () => {
    expect(ticks('2027-03-01', '2027-05-02')).toEqual(['2027-03-01', '2027-04-01', '2027-05-01']);
  });

  it('leaves months out of a long season, evenly over the turn of the year', () => {
    expect(ticks('2026-10-05', '2027-10-31')).toEqual([
      '2026-11-01',
      '2027-01-01',
      '2027-03-01',
      '2027-05-01',
      '2027-07-01',
      '2027-09-01',
    ]);
  });

  it('has years only where a challenge runs for many', () => {
    expect(ticks('2021-05-01', '2025-05-01')).toEqual([
      '2022-01-01',
      '2023-01-01',
      '2024-01-01',
      '2025-01-01',
    ]);
  });

  it('names its first and last day where a season has no two months', () => {
    expect(dayScale('2027-05-08', '2027-06-02', 0, 1).ticks).toEqual([
      { date: '2027-05-08', names: 'day' },
      { date: '2027-06-02', names: 'day' },
    ]);
  });

  it('puts a single day in the middle', () => {
    const one = dayScale('2027-05-08', '2027-05-08', 0, 100);
    expect(one.at('2027-05-08')).toBe(50);
    expect(one.ticks).toEqual([{ date: '2027-05-08', names: 'day' }]);
  });
});
