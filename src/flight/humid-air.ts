// A. Picard, R. S. Davis, M. Gläser and K. Fujii, "Revised formula for the density of moist air (CIPM-2007)", Metrologia 45
// (2008) 149–155. T in K, t in °C, p in Pa; names as in the paper.

/** 0 °C in K. */
const celsiusZero = 273.15;

/** Saturation vapour pressure of water in Pa (equation A1.1). */
function saturationPressure(T: number): number {
  return Math.exp(1.2378847e-5 * T * T - 1.9121316e-2 * T + 33.93711047 - 6.3431645e3 / T);
}

/** By how much the vapour pressure rises in air (equation A1.2). */
function enhancement(t: number, p: number): number {
  return 1.00062 + 3.14e-8 * p + 5.6e-7 * t * t;
}

/** How far humid air is from an ideal gas (equation A1.4), with the mole fraction of water vapour. */
function compressibility(T: number, p: number, vapour: number): number {
  const t = T - celsiusZero;
  const first =
    1.58123e-6 +
    t * (-2.9331e-8 + t * 1.1043e-10) +
    (5.707e-6 - 2.051e-8 * t) * vapour +
    (1.9898e-4 - 2.376e-6 * t) * vapour * vapour;
  const ratio = p / T;
  return 1 - ratio * first + ratio * ratio * (1.83e-11 - 0.765e-8 * vapour * vapour);
}

/**
 * Density of humid air in kg/m³ from temperature (K), pressure (Pa) and relative humidity (0 to 1), with 400 ppm of carbon
 * dioxide. Made for 15 to 27 °C and 600 to 1100 hPa, with 2.2e-5 relative; outside of that it is still far better than
 * anybody reads the weather at a flying field.
 */
export function humidAirDensity(temperature: number, pressure: number, humidity: number): number {
  const enhanced = enhancement(temperature - celsiusZero, pressure) * saturationPressure(temperature);
  const vapour = (humidity * enhanced) / pressure;
  const Z = compressibility(temperature, pressure, vapour);
  return ((3.48374e-3 * pressure) / (Z * temperature)) * (1 - 0.378 * vapour);
}
