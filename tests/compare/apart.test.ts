import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { apart, furthestApart } from '../../src/compare/apart.ts';

describe('how far two numbers lie apart', () => {
  // By hand: 10 − 4 = 6; √(0.3² + 0.4²) = 0.5; 6 / 0.5 = 12. Law of propagation: JCGM 100:2008, equation (10).
  it('is their difference over its uncertainty', () => {
    expect(apart({ value: 10, u: 0.3 }, { value: 4, u: 0.4 })).toBeCloseTo(12, 12);
  });

  it('is nothing for equal numbers, and without end for exact ones that differ', () => {
    expect(apart({ value: 3, u: 0 }, { value: 3, u: 0 })).toBe(0);
    expect(apart({ value: 3, u: 0 }, { value: 4, u: 0 })).toBe(Number.POSITIVE_INFINITY);
  });

  it('does not depend on the unit, nor on the order', () => {
    const measured = fc.record({
      value: fc.double({ min: -1e3, max: 1e3, noNaN: true }),
      u: fc.double({ min: 1e-3, max: 1e3, noNaN: true }),
    });
    const unit = fc.double({ min: 1e-3, max: 1e3, noNaN: true });
    fc.assert(
      fc.property(measured, measured, unit, (a, b, factor) => {
        const scaled = [a, b].map(({ value, u }) => ({ value: value * factor, u: u * factor }));
        expect(apart(b, a)).toBe(apart(a, b));
        expect(apart(scaled[0]!, scaled[1]!)).toBeCloseTo(apart(a, b), 6);
      }),
      { seed: 20261125 },
    );
  });
});

describe('the furthest two of several', () => {
  // By hand: 1 and 2 are 1/√2 apart, 2 and 5 3/√2, 1 and 5 4/√2 = 2.828.
  it('count', () => {
    const numbers = [1, 2, 5].map((value) => ({ value, u: 1 }));
    expect(furthestApart(numbers)).toBeCloseTo(2.8284271247, 9);
  });

  it('are not there of fewer than two', () => {
    expect(furthestApart([{ value: 1, u: 1 }])).toBeNull();
    expect(furthestApart([])).toBeNull();
  });
});
