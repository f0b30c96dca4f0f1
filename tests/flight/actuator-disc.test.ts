import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { idealEfficiency, idealStaticPower } from '../../src/flight/actuator-disc.ts';

// UIUC Propeller Data Site, J. B. Brandt, R. W. Deters, G. K. Ananda, O. D. Dantsker and M. S. Selig: DA4002, as measured.
const measured = [
  [0.3155, 0.103248, 0.073956],
  [0.5436, 0.068049, 0.05968],
  [0.6427, 0.0469, 0.047706],
  [0.6592, 0.052166, 0.049923],
] as const;

describe('the actuator disc', () => {
  it.each(measured)('at J = %d is better than a measured propeller', (J, thrust, power) => {
    const efficiency = (J * thrust) / power;
    expect(efficiency).toBeLessThan(idealEfficiency(thrust, J));
    // And not so much better that the bound would say nothing.
    expect(efficiency).toBeGreaterThan(0.6 * idealEfficiency(thrust, J));
  });

  it('loses nothing without thrust', () => {
    expect(idealEfficiency(0, 0.5)).toBe(1);
  });

  it('standing still agrees with a case by hand, and with flight so slow that it nearly stands', () => {
    // 1 N on a disc of 0.1 m² in air of 1.225 kg/m³: 1/√0.245 = 2.02031 W.
    expect(idealStaticPower(1, 1.225, 0.1)).toBeCloseTo(2.02031, 5);
    expect(idealStaticPower(-1, 1.225, 0.1)).toBe(0);
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 10, noNaN: true }),
        fc.double({ min: 0.05, max: 1, noNaN: true }),
        (thrust, diameter) => {
          // T·V/η with n = 10/s; V so small that it adds less than a millionth.
          const [density, n, V] = [1.2, 10, 1e-7];
          const efficiency = idealEfficiency(thrust / (density * n ** 2 * diameter ** 4), V / (n * diameter));
          const still = idealStaticPower(thrust, density, (Math.PI * diameter ** 2) / 4);
          expect(((thrust * V) / efficiency / still - 1) ** 2).toBeLessThan(1e-12);
        },
      ),
      { seed: 1889 },
    );
  });
});
