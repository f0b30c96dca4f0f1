// US Standard Atmosphere, 1976 (NOAA, NASA, US Air Force; NOAA-S/T 76-1562). Its constants, in SI; all exact by definition.

/** Temperature at sea level, K. */
const seaLevelTemperature = 288.15;
/** Pressure at sea level, Pa. */
const seaLevelPressure = 101_325;
/** Change of temperature with geopotential altitude in the troposphere, K/m. */
const lapseRate = -0.0065;
/** Standard gravity, m/s², × molar mass of air, kg/kmol, / gas constant of the standard, J/(kmol·K). */
const massOverGas = (9.80665 * 28.9644) / 8314.32;
/** Radius of the earth in the standard, m. */
const earthRadius = 6_356_766;
/** The troposphere of the standard reaches up to this geopotential altitude, m; its tables begin at the other. */
const highest = 11_000;
const lowest = -5000;

export interface Atmosphere {
  /** K. */
  readonly temperature: number;
  /** Pa. */
  readonly pressure: number;
}

/**
 * Temperature and pressure of the standard atmosphere at a geometric altitude in m above the sea. Null outside the
 * troposphere (above some 11 km) and below −5 km, where nobody flies models.
 */
export function standardAtmosphere(altitude: number): Atmosphere | null {
  const geopotential = (earthRadius * altitude) / (earthRadius + altitude);
  if (!(geopotential >= lowest && geopotential <= highest)) return null;
  const temperature = seaLevelTemperature + lapseRate * geopotential;
  const pressure = seaLevelPressure * (seaLevelTemperature / temperature) ** (massOverGas / lapseRate);
  return { temperature, pressure };
}

/** Density of dry air as an ideal gas in kg/m³ from temperature in K and pressure in Pa, as the standard has it. */
export function dryAirDensity({ temperature, pressure }: Atmosphere): number {
  return (pressure * 28.9644) / (8314.32 * temperature);
}
