/**
 * Slope of lift with angle, per radian, of a straight wing of this aspect ratio: 2π·AR/(2 + √(AR² + 4)).
 * H. B. Helmbold, Jahrbuch 1942 der Deutschen Luftfahrtforschung, I 111 (from memory); straight wings, attached flow.
 */
export function liftSlope(aspectRatio: number): number {
  return (2 * Math.PI * aspectRatio) / (2 + Math.sqrt(aspectRatio * aspectRatio + 4));
}

/** Change of downwash at the tail with the wing's angle, 2a/(π·AR): far behind an elliptically loaded wing. */
export function downwashSlope(wingLiftSlope: number, aspectRatio: number): number {
  return (2 * wingLiftSlope) / (Math.PI * aspectRatio);
}

/**
 * Neutral point in shares of the mean aerodynamic chord behind its leading edge, for a tail volume whose arm runs from the
 * balance: h_ac + V·κ, κ = (a_t/a_w)(1 − dε/dα). Anderson, Introduction to Flight, chapter 7.
 */
export function neutralPointFromBalance(
  aerodynamicCentre: number,
  tailVolume: number,
  effect: number,
): number {
  return aerodynamicCentre + tailVolume * effect;
}

/**
 * The same for a tail volume whose arm runs from quarter-chord to quarter-chord: the shift of the balance to the neutral
 * point shortens the arm, hence the divisor 1 + κ·S_t/S.
 */
export function neutralPoint(tailVolume: number, effect: number, tailShare: number): number {
  return neutralPointFromBalance(0.25, tailVolume / (1 + effect * tailShare), effect);
}

/** How much the tail works for the wing's angle, κ = (a_t/a_w)(1 − dε/dα). */
export function tailEffect(tailLiftSlope: number, wingLiftSlope: number, downwash: number): number {
  return (tailLiftSlope / wingLiftSlope) * (1 - downwash);
}
