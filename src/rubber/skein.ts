/** Section of all strands of a skein side by side, in m². */
export function strandsSection(strands: number, width: number, thickness: number): number {
  return strands * width * thickness;
}

/** Mass of a skein in kg from its density (kg/m³), section (m²) and made-up length (m). */
export function geometricMass(density: number, section: number, length: number): number {
  return density * section * length;
}

/** Made-up length of a skein in m from its mass, density and section. */
export function skeinLength(mass: number, density: number, section: number): number {
  return mass / (density * section);
}

/** Section of a skein in m² from its mass (kg), density (kg/m³) and made-up length (m). */
export function weighedSection(mass: number, density: number, length: number): number {
  return mass / (density * length);
}

/**
 * Turns at which a skein breaks, C·L/√A: length and section in m and m². All skeins of one rubber break at the same
 * twist for their thickness. Common practice finds a constant C of 9 to 13; no source.
 */
export function breakTurns(constant: number, length: number, section: number): number {
  return (constant * length) / Math.sqrt(section);
}
