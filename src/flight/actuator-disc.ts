// Rankine's and Froude's actuator disc: a propeller without friction, twist of the wake or tip losses. No propeller of the
// same disc, thrust, speed and air can do better. W. J. M. Rankine 1865, R. E. Froude 1889; any textbook of propellers.

/**
 * Efficiency no propeller exceeds, 2/(1 + √(1 + 8·C_T/(π·J²))), with the thrust coefficient C_T = T/(ρ·n²·D⁴) and the
 * advance ratio J = V/(n·D); C_T ≥ 0 and J > 0.
 */
export function idealEfficiency(thrustCoefficient: number, advanceRatio: number): number {
  return 2 / (1 + Math.sqrt(1 + (8 * thrustCoefficient) / (Math.PI * advanceRatio ** 2)));
}

/**
 * The least power in W that holds a thrust (N) standing still: T^1.5/√(2·ρ·A), density in kg/m³ and disc area in m². No
 * power for a thrust that is not positive.
 */
export function idealStaticPower(thrust: number, density: number, discArea: number): number {
  return Math.max(thrust, 0) ** 1.5 / Math.sqrt(2 * density * discArea);
}
