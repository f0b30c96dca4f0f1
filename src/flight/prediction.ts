import { gravity } from './gravity.ts';

/** Power in W that keeps a model of this mass (kg) at its height while it would sink so fast (m/s): m·g·sink. */
export function powerToStayUp(mass: number, sink: number): number {
  return mass * gravity * sink;
}

/** What a flight starts with, in SI. */
export interface Start {
  /** Energy of the rubber, J. */
  readonly energy: number;
  /** Height of the launch above the landing, m. */
  readonly height: number;
  /** Flying mass, kg. */
  readonly mass: number;
  /** Sinking speed without power, m/s. */
  readonly sink: number;
}

/**
 * Time in the air in s for a share of the rubber's energy that becomes height: (η·E + m·g·h)/(m·g·sink). An energy balance:
 * still air, the power spent at the speed at which the model glides, no energy lost in a stall or in the transition to the
 * glide, so it holds for a well-trimmed model.
 */
export function timeInTheAir({ energy, height, mass, sink }: Start, efficiency: number): number {
  return (efficiency * energy + mass * gravity * height) / powerToStayUp(mass, sink);
}

/**
 * The share of the energy there was that turned into a time in the air (s): m·g·sink·t/(E + m·g·h). The same balance the
 * other way round.
 */
export function energyUse({ energy, height, mass, sink }: Start, time: number): number {
  return (powerToStayUp(mass, sink) * time) / (energy + mass * gravity * height);
}
