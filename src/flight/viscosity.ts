/** Sutherland's constants for air as the US Standard Atmosphere, 1976, gives them (equation 51): kg/(s·m·√K) and K. */
const beta = 1.458e-6;
const sutherland = 110.4;

/**
 * Dynamic viscosity of air in Pa·s at a temperature in K: β·T^1.5/(T + S). Good to a few parts in a thousand from 100 to
 * 1000 K; the humidity of the air and its pressure hardly matter.
 */
export function airViscosity(temperature: number): number {
  return (beta * temperature * Math.sqrt(temperature)) / (temperature + sutherland);
}
