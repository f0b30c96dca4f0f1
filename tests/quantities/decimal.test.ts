import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  compareDecimal,
  exactly,
  meanDecimal,
  roundDecimal,
  significant,
  sumDecimal,
  toNumber,
} from '../../src/quantities/decimal.ts';

describe('roundDecimal', () => {
  it('rounds as published rules do: 100.62 and 100.70 are 101 to the nearest second, 100 truncated', () => {
    // Sporting code 2019, F1.2.6 (nearest second) and 5.1.1.4 (records, truncated).
    const mean = meanDecimal([100.62, 100.7]);
    expect(roundDecimal(mean, '1', 'nearest')).toBe(101);
    expect(roundDecimal(mean, '1', 'down')).toBe(100);
  });

  it('lets a half go up', () => {
    expect(roundDecimal('0.25', '0.1', 'nearest')).toBe(0.3);
    expect(roundDecimal(1.005, '0.01', 'nearest')).toBe(1.01);
    expect(roundDecimal('41.0005', '0.001', 'nearest')).toBe(41.001);
  });

  it('loses no step to binary fractions', () => {
    expect(roundDecimal(0.1 + 0.2, '0.1', 'down')).toBe(0.3);
    expect(roundDecimal(41.71, '0.1', 'down')).toBe(41.7);
    expect(roundDecimal(meanDecimal([41.62, 41.8]), '0.01', 'down')).toBe(41.71);
    expect(roundDecimal(8.3, '0.1', 'down')).toBe(8.3);
  });

  it('takes any resolution above zero, and refuses others', () => {
    expect(roundDecimal(41.79, '0.2', 'down')).toBe(41.6);
    expect(roundDecimal(41.79, '0.5', 'nearest')).toBe(42);
    expect(roundDecimal(1234, '1e2', 'nearest')).toBe(1200);
    expect(() => roundDecimal(1, '0', 'down')).toThrow(RangeError);
    expect(() => roundDecimal(Number.NaN, '1', 'down')).toThrow(RangeError);
  });

  it('leaves every multiple of the resolution where it is, and never moves a value by a step or more', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 10_000_000 }), fc.constantFrom(0, 1, 2, 3), (steps, places) => {
        const text =
          places === 0
            ? String(steps)
            : `${Math.floor(steps / 10 ** places)}.${String(steps % 10 ** places).padStart(places, '0')}`;
        const resolution = places === 0 ? '1' : `0.${'0'.repeat(places - 1)}1`;
        expect(roundDecimal(Number(text), resolution, 'down')).toBe(Number(text));
        expect(roundDecimal(text, resolution, 'nearest')).toBe(Number(text));
      }),
      { seed: 11, numRuns: 500 },
    );
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1e5, noNaN: true }), (value) => {
        const down = roundDecimal(value, '0.1', 'down');
        expect(down).toBeLessThanOrEqual(value * (1 + 1e-14));
        expect(value - down).toBeLessThan(0.1 + 1e-9);
        expect(Math.abs(roundDecimal(value, '0.1', 'nearest') - value)).toBeLessThan(0.05 + 1e-9);
      }),
      { seed: 12, numRuns: 500 },
    );
  });
});

describe('exact sums and means', () => {
  it('mean of 41.62 and 41.80 is 41.71', () => {
    expect(compareDecimal(meanDecimal([41.62, 41.8]), '41.71')).toBe(0);
    expect(toNumber(meanDecimal([41.62, 41.8]))).toBe(41.71);
  });

  it('three tenths are three tenths, though not for binary fractions', () => {
    expect(0.1 + 0.1 + 0.1).not.toBe(0.3);
    expect(compareDecimal(sumDecimal([0.1, 0.1, 0.1]), 0.3)).toBe(0);
    expect(toNumber(sumDecimal([]))).toBe(0);
  });

  it('keeps thirds, which no decimal can', () => {
    const third = meanDecimal([1, 0, 0]);
    expect(compareDecimal(sumDecimal([third, third, third]), 1)).toBe(0);
    expect(compareDecimal(third, 0.333333333333333)).toBe(1);
    expect(toNumber(third)).toBe(1 / 3);
    expect(toNumber(meanDecimal([-1, 0, 0]))).toBe(-1 / 3);
  });

  it('refuses a mean of nothing and what is no decimal', () => {
    expect(() => meanDecimal([])).toThrow(RangeError);
    for (const text of ['', '.', '-', 'x', '1,5', 'Infinity', '1e9999'])
      expect(() => exactly(text)).toThrow(RangeError);
  });

  it('reads a text as it stands and a number as it prints', () => {
    fc.assert(
      fc.property(fc.double({ min: -1e9, max: 1e9, noNaN: true }), (value) => {
        const printed = Number(value.toPrecision(15));
        expect(toNumber(exactly(value))).toBe(printed + 0);
        expect(toNumber(exactly(String(value)))).toBe(value + 0);
      }),
      { seed: 13, numRuns: 500 },
    );
  });
});

describe('significant', () => {
  it('keeps 12 digits unless told otherwise', () => {
    expect(significant(2 / 3)).toBe(0.666666666667);
    expect(significant(7.19843961938123, 3)).toBe(7.2);
    expect(Object.is(significant(-0), 0)).toBe(true);
  });
});
