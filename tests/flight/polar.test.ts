import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bestGlide, type Glider, glideAt, minimumSink } from '../../src/flight/polar.ts';

const positive = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const anyGlider: fc.Arbitrary<Glider> = fc.record({
  mass: positive(0.001, 2),
  wingArea: positive(0.01, 2),
  chord: positive(0.03, 0.5),
  aspectRatio: positive(2, 25),
  density: positive(0.8, 1.4),
  viscosity: positive(1.6e-5, 2e-5),
  plateFactor: positive(0, 3),
  fixedDrag: positive(0.001, 0.1),
  spanEfficiency: positive(0.5, 1),
  usableLift: positive(0.2, 2),
});

describe('a parabolic polar', () => {
  it('has three times as much induced as fixed drag at minimum sink, and flies there at 0.7598 of its best glide', () => {
    // Anderson, Introduction to Flight, chapter 6 (from memory): C_D,i = 3·C_D0; V = 3^(−1/4)·V of the best glide.
    fc.assert(
      fc.property(anyGlider, (any) => {
        const glider = { ...any, plateFactor: 0, usableLift: Number.POSITIVE_INFINITY };
        const slowest = minimumSink(glider);
        const furthest = bestGlide(glider);
        expect((slowest.drag - glider.fixedDrag) / glider.fixedDrag).toBeCloseTo(3, 9);
        expect((furthest.drag - glider.fixedDrag) / glider.fixedDrag).toBeCloseTo(1, 9);
        expect(Math.abs(slowest.speed / furthest.speed - 0.7598)).toBeLessThan(0.00005);
      }),
      { seed: 1976 },
    );
  });
});

describe('the polar of a model', () => {
  it('takes each lift coefficient with its own speed and Reynolds number', () => {
    // By hand: 0.2 kg on 0.2 m² of 0.1 m chord in air of 1.25 kg/m³ and 1.8e-5 Pa·s, C_L 0.64: V = √(2·0.2·9.80665/(1.25·0.2·
    // 0.64)) = 4.95143 m/s, Re = 1.25·4.95143·0.1/1.8e-5 = 34385.0, plate 2·1.328/√34385 = 0.0143234, induced 0.64²/(π·0.8·12)
    // = 0.0135812; C_D = 1.5·0.0143234 + 0.02 + 0.0135812 = 0.0550663; sink 4.95143·0.0550663/0.64 = 0.426026 m/s.
    const glider = {
      mass: 0.2,
      wingArea: 0.2,
      chord: 0.1,
      aspectRatio: 12,
      density: 1.25,
      viscosity: 1.8e-5,
      plateFactor: 1.5,
      fixedDrag: 0.02,
      spanEfficiency: 0.8,
      usableLift: 1,
    };
    const glide = glideAt(glider, 0.64);
    expect(glide.speed).toBeCloseTo(4.95143, 5);
    expect(glide.drag).toBeCloseTo(0.0550663, 6);
    expect(glide.sink).toBeCloseTo(0.426026, 5);
  });

  it('is nowhere better than at its two optima', () => {
    fc.assert(
      fc.property(anyGlider, positive(1e-4, 1), (glider, share) => {
        const other = glideAt(glider, share * glider.usableLift);
        const slowest = minimumSink(glider);
        const furthest = bestGlide(glider);
        expect(slowest.sink).toBeLessThanOrEqual(other.sink * (1 + 1e-12));
        expect(furthest.drag / furthest.lift).toBeLessThanOrEqual((other.drag / other.lift) * (1 + 1e-12));
        for (const { lift } of [slowest, furthest]) {
          expect(lift).toBeGreaterThan(0);
          expect(lift).toBeLessThanOrEqual(glider.usableLift);
        }
      }),
      { seed: 1945, numRuns: 500 },
    );
  });

  it('finds the place that a search finds', () => {
    // Golden section, J. Kiefer, Proceedings of the American Mathematical Society 4 (1953) 502, written for this test.
    fc.assert(
      fc.property(anyGlider, (glider) => {
        const golden = (Math.sqrt(5) - 1) / 2;
        let [low, high] = [1e-3, glider.usableLift];
        while (high - low > 1e-9) {
          const left = high - golden * (high - low);
          const right = low + golden * (high - low);
          if (glideAt(glider, left).sink < glideAt(glider, right).sink) high = right;
          else low = left;
        }
        expect(Math.abs(minimumSink(glider).lift - high)).toBeLessThan(1e-6);
      }),
      { seed: 1953 },
    );
  });
});
