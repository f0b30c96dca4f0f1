import { describe, expect, it } from 'vitest';
import { standardAtmosphere } from '../../src/flight/standard-atmosphere.ts';

// US Standard Atmosphere, 1976, table I, geometric altitude in m: temperature in K and pressure in Pa, from memory.
const table = [
  [0, 288.15, 101_325],
  [1000, 281.651, 89_876],
  [2000, 275.154, 79_501],
  [3000, 268.659, 70_121],
] as const;

describe('the standard atmosphere', () => {
  it.each(table)('at %i m is that of the published table', (altitude, temperature, pressure) => {
    const air = standardAtmosphere(altitude)!;
    expect(Math.abs(air.temperature - temperature)).toBeLessThanOrEqual(0.0005);
    expect(Math.abs(air.pressure - pressure)).toBeLessThanOrEqual(1);
  });

  it('goes below the sea, and ends at the top of the troposphere', () => {
    // Table I at −1000 m, from memory: 294.651 K, 113930 Pa.
    const low = standardAtmosphere(-1000)!;
    expect(Math.abs(low.temperature - 294.651)).toBeLessThanOrEqual(0.0005);
    expect(Math.abs(low.pressure / 113_930 - 1)).toBeLessThanOrEqual(1e-4);
    // 11 km geopotential are 11019 m geometric (table I).
    expect(standardAtmosphere(11_019)).not.toBeNull();
    expect(standardAtmosphere(11_020)).toBeNull();
    expect(standardAtmosphere(-6000)).toBeNull();
    expect(standardAtmosphere(Number.NaN)).toBeNull();
  });
});
