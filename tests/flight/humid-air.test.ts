import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { humidAirDensity } from '../../src/flight/humid-air.ts';

describe('the density of humid air', () => {
  it('agrees with a mixture of ideal gases within 0.2 %', () => {
    // An independent reckoning: Dalton's law with R 287.05 and 461.5 J/(kg·K) and the vapour pressure of A. L. Buck, Journal
    // of Applied Meteorology 20 (1981) 1527, 611.21·exp((18.678 − t/234.5)·t/(257.14 + t)) Pa. The gas is not quite ideal.
    const weather = fc.record({
      t: fc.double({ min: 0, max: 40, noNaN: true }),
      p: fc.double({ min: 70_000, max: 105_000, noNaN: true }),
      h: fc.double({ min: 0, max: 1, noNaN: true }),
    });
    fc.assert(
      fc.property(weather, ({ t, p, h }) => {
        const vapour = h * 611.21 * Math.exp(((18.678 - t / 234.5) * t) / (257.14 + t));
        const mixture = ((p - vapour) / 287.05 + vapour / 461.5) / (t + 273.15);
        expect(Math.abs(humidAirDensity(t + 273.15, p, h) / mixture - 1)).toBeLessThan(0.002);
      }),
      { seed: 2007 },
    );
  });
});
