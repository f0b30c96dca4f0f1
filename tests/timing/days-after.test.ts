import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { daysAfter } from '../../src/timing/days-after.ts';

describe('daysAfter', () => {
  it('counts over the ends of months and years, and over leap days', () => {
    // By hand, with a wall calendar.
    expect(daysAfter('2027-03-14', 14)).toBe('2027-03-28');
    expect(daysAfter('2027-12-31', 1)).toBe('2028-01-01');
    expect(daysAfter('2028-02-28', 1)).toBe('2028-02-29');
    expect(daysAfter('2100-02-28', 1)).toBe('2100-03-01');
    expect(daysAfter('2027-03-01', -1)).toBe('2027-02-28');
    expect(daysAfter('2027-03-01', 0)).toBe('2027-03-01');
  });

  it('agrees with the calendar of ECMAScript', () => {
    const day = 86_400_000;
    const first = Date.UTC(1600, 0, 1) / day;
    const last = Date.UTC(2999, 11, 31) / day;
    fc.assert(
      fc.property(
        fc.integer({ min: first, max: last }),
        fc.integer({ min: -9999, max: 9999 }),
        (from, days) => {
          const dateOf = (number: number) => new Date(number * day).toISOString().slice(0, 10);
          expect(daysAfter(dateOf(from), days)).toBe(dateOf(from + days));
        },
      ),
      { seed: 1125 },
    );
  });
});
