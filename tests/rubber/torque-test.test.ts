import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { breakTurnsOfTest, torqueRatio, turnsRatio } from '../../src/rubber/torque-test.ts';

const inch = 0.0254;
const skein = fc.record({
  mass: fc.double({ min: 1e-4, max: 0.2, noNaN: true }),
  length: fc.double({ min: 0.05, max: 3, noNaN: true }),
});

describe('a tested skein and another one', () => {
  it('have turns as L^1.5·m^−0.5, torques as (m/L)^1.5, and their product as m (law)', () => {
    // Skein scaling, identities of break turns C·L/√A and of a fixed energy per mass.
    fc.assert(
      fc.property(skein, skein, (one, other) => {
        const turns = turnsRatio(one, other);
        const torque = torqueRatio(one, other);
        expect((turns * torque) / (one.mass / other.mass)).toBeCloseTo(1, 9);
        const byRule = breakTurnsOfTest(10.6, 930, one) / breakTurnsOfTest(10.6, 930, other);
        expect(turns / byRule).toBeCloseTo(1, 9);
      }),
      { seed: 7, numRuns: 300 },
    );
  });

  it('differ by round numbers where their measures do', () => {
    const tested = { mass: 0.01, length: 0.4 };
    // By hand: four times the mass at the same length, 4^1.5 = 8 times the torque and half the turns; four times the length
    // at the same mass per length, the same torque and four times the turns.
    expect(torqueRatio({ mass: 0.04, length: 0.4 }, tested)).toBeCloseTo(8, 12);
    expect(turnsRatio({ mass: 0.04, length: 0.4 }, tested)).toBeCloseTo(0.5, 12);
    expect(torqueRatio({ mass: 0.04, length: 1.6 }, tested)).toBeCloseTo(1, 12);
    expect(turnsRatio({ mass: 0.04, length: 1.6 }, tested)).toBeCloseTo(4, 12);
  });

  it('break at the turns of a reported case', () => {
    // Common practice, no source: two strands 0.083 × 0.042 in, loop 17 in, C = 10.64 → 2166 turns. Its mass by hand:
    // 2 · 0.083 · 0.042 · 17 in³ of 0.93 g/cm³.
    const length = 17 * inch;
    const mass = 930 * 2 * (0.083 * inch) * (0.042 * inch) * length;
    expect(breakTurnsOfTest(10.64, 930, { mass, length })).toBeCloseTo(2166, 0);
  });
});
