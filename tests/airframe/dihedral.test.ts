import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { effectiveDihedral } from '../../src/airframe/dihedral.ts';

const panel = (length: number, chord: number, dihedral: number) => ({
  length,
  root: chord,
  tip: chord,
  sweep: 0,
  dihedral,
});

describe('the effective dihedral', () => {
  it('is the dihedral itself where the wing is a plain V', () => {
    expect(effectiveDihedral([panel(0.6, 0.2, 0.1), panel(0.3, 0.15, 0.1)])).toBeCloseTo(0.1, 12);
  });

  it('weighs a raised tip by the square of its reach', () => {
    // By hand, chord constant, Γ small enough that cos Γ = 1 to 5e-7: inner half flat, outer half at 0.001 rad.
    // ∫Γ y dy / ∫y dy = 0.001·(1² − 0.5²)/1² = 0.00075.
    expect(effectiveDihedral([panel(0.5, 0.2, 0), panel(0.5, 0.2, 0.001)])).toBeCloseTo(0.00075, 9);
  });

  it('agrees with the integrals summed strip by strip', () => {
    const any = fc.record({
      length: fc.double({ min: 0.05, max: 2, noNaN: true }),
      root: fc.double({ min: 0.02, max: 0.5, noNaN: true }),
      tip: fc.double({ min: 0.02, max: 0.5, noNaN: true }),
      sweep: fc.constant(0),
      dihedral: fc.double({ min: -0.1, max: 0.7, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(any, { minLength: 1, maxLength: 4 }), (panels) => {
        const strips = 2000;
        let above = 0;
        let below = 0;
        let y = 0;
        for (const { length, root, tip, dihedral } of panels) {
          const width = (length * Math.cos(dihedral)) / strips;
          for (let strip = 0; strip < strips; strip++) {
            const weight = (root + ((tip - root) * (strip + 0.5)) / strips) * (y + width / 2) * width;
            above += dihedral * weight;
            below += weight;
            y += width;
          }
        }
        expect(effectiveDihedral(panels)).toBeCloseTo(above / below, 6);
      }),
      { seed: 13, numRuns: 40 },
    );
  });
});
