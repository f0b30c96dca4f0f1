import { describe, expect, it } from 'vitest';
import { dryAirDensity, standardAtmosphere } from '../../src/flight/standard-atmosphere.ts';
import { airViscosity } from '../../src/flight/viscosity.ts';

// US Standard Atmosphere, 1976, table I, geometric altitude in m: density in kg/m³ as printed, to half of its last digit;
// temperature in K and pressure in Pa from memory of the same table.
const table = [
  [0, 1.225, 288.15, 101_325],
  [1000, 1.1117, 281.651, 89_876],
  [2000, 1.0066, 275.154, 79_501],
  [3000, 0.9093, 268.659, 70_121],
] as const;

describe('the standard atmosphere', () => {
  it.each(table)('at %i m is that of the published table', (altitude, density, temperature, pressure) => {
    const air = standardAtmosphere(altitude)!;
    expect(Math.abs(dryAirDensity(air) - density)).toBeLessThanOrEqual(0.00005);
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

describe('the viscosity of air', () => {
  it.each([
    // US Standard Atmosphere, 1976: 1.7893e-5 Pa·s at sea level, 1.7414e-5 at 5000 ft; ± 2e-4 relative for the digits printed.
    [0, 1.7893e-5],
    [5000 * 0.3048, 1.7414e-5],
  ])('at %d m is that of the published table', (altitude, viscosity) => {
    const ours = airViscosity(standardAtmosphere(altitude)!.temperature);
    expect(Math.abs(ours / viscosity - 1)).toBeLessThan(2e-4);
  });
});
