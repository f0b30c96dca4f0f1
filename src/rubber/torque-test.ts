import { breakTurns, weighedSection } from './skein.ts';

/**
 * Two skeins of the same rubber, wound to the same share of their break turns, are the same skein in other measures.
 * With the break turns C·L/√A and A = m/(ρ·L), turns go as L^1.5·m^−0.5; the energy per mass is the same, so turns times
 * torque goes as m and torque as (m/L)^1.5. Identities of the model; the model itself is common practice, no source.
 */
export interface SkeinMeasures {
  /** kg. */
  readonly mass: number;
  /** Made-up length, m. */
  readonly length: number;
}

/** What the torque of one skein is multiplied by to give that of another at the same share of the break turns. */
export function torqueRatio(skein: SkeinMeasures, tested: SkeinMeasures): number {
  return (skein.mass / skein.length / (tested.mass / tested.length)) ** 1.5;
}

/** What the turns of one skein are multiplied by to give those of another at the same share of the break turns. */
export function turnsRatio(skein: SkeinMeasures, tested: SkeinMeasures): number {
  return (skein.length / tested.length) ** 1.5 * (skein.mass / tested.mass) ** -0.5;
}

/**
 * Turns at which a tested skein would break, C·L/√A with the section of its mass, A = m/(ρ·L).
 *
 * @param density kg/m³
 */
export function breakTurnsOfTest(constant: number, density: number, { mass, length }: SkeinMeasures): number {
  return breakTurns(constant, length, weighedSection(mass, density, length));
}
