import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { noseBallast } from '../../src/airframe/nose-ballast.ts';

describe('weight in the nose', () => {
  it('balances a beam by hand', () => {
    // A model of 600 g with 300 mm from its balance to the nose, to balance 20 mm further forward:
    // behind the new balance 600 g · 20 mm = 12000 g·mm; ahead of it b · 280 mm; b = 42.857 g.
    expect(noseBallast(0.6, 0.3, 0.02)).toBeCloseTo(0.0428571, 7);
    // 20 mm back: 600 · 20/320 = 37.5 g have to come out of the nose.
    expect(noseBallast(0.6, 0.3, -0.02)).toBeCloseTo(-0.0375, 12);
    expect(noseBallast(0.6, 0.3, 0)).toBe(0);
  });

  it('cannot pull the balance to where it sits itself', () => {
    expect(noseBallast(0.6, 0.3, 0.3)).toBeNull();
    expect(noseBallast(0.6, 0.3, 0.4)).toBeNull();
  });

  it('moves the common centre of gravity by the shift asked for', () => {
    // Definition of the centre of gravity: Σ m·x / Σ m, with the nose at 0.
    fc.assert(
      fc.property(
        fc.double({ min: 0.001, max: 3, noNaN: true }),
        fc.double({ min: 0.02, max: 1.5, noNaN: true }),
        fc.double({ min: -0.5, max: 0.9, noNaN: true }),
        (mass, arm, share) => {
          const shift = share * arm;
          const ballast = noseBallast(mass, arm, shift)!;
          expect((mass * arm) / (mass + ballast)).toBeCloseTo(arm - shift, 10);
        },
      ),
      { seed: 414, numRuns: 300 },
    );
  });
});
