import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  downwashSlope,
  liftSlope,
  neutralPoint,
  neutralPointFromBalance,
} from '../../src/airframe/stability.ts';

describe('the neutral point', () => {
  it('with an arm between quarter-chords is the point from which the shortened arm gives that very point', () => {
    const share = fc.double({ min: 0.05, max: 1, noNaN: true });
    fc.assert(
      fc.property(share, share, fc.double({ min: 1, max: 8, noNaN: true }), (tail, effect, arm) => {
        // All lengths in mean chords: the arm from the balance is arm − (h − 0.25).
        const point = neutralPoint(tail * arm, effect, tail);
        expect(neutralPointFromBalance(0.25, tail * (arm - (point - 0.25)), effect)).toBeCloseTo(point, 12);
      }),
      { seed: 14, numRuns: 100 },
    );
  });
});

describe('the slope of lift', () => {
  it('goes to 2π for a very long wing (thin-aerofoil theory) and to π·AR/2 for a very short one (slender-wing theory)', () => {
    expect(liftSlope(1e6)).toBeCloseTo(2 * Math.PI, 4);
    expect(liftSlope(1e-4) / 1e-4).toBeCloseTo(Math.PI / 2, 4);
  });

  it('gives a downwash that dies away with the aspect ratio', () => {
    // 2a/(π·AR) with a → 2π is 4/AR.
    expect(downwashSlope(liftSlope(1e5), 1e5) * 1e5).toBeCloseTo(4, 3);
  });
});
