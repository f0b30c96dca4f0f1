import { type Glider, minimumSink } from './polar.ts';
import { timeInTheAir } from './prediction.ts';

/** No rubber gives back more, J/kg: the highest figure reported for contest strip is 14.4 J/g. */
const mostEnergy = 15_000;
/** No propeller of a model turns more of it into height. */
const mostEfficiency = 0.85;
/** No thin section at these Reynolds numbers lifts more. */
const mostLift = 1.5;
/** Height, m, that a strong throw or a misread slope may add. */
const allowance = 5;

/** What an upper bound is worked out of: no more than can be measured. */
export interface Bounded
  extends Pick<Glider, 'mass' | 'wingArea' | 'chord' | 'aspectRatio' | 'density' | 'viscosity'> {
  /** All of it, kg. */
  readonly rubberMass: number;
  /** Height of the launch above the landing, m. */
  readonly height: number;
}

/**
 * A time in s that no model with these measures should exceed in still air: the best rubber, wound to break, the best
 * propeller and a wing with no more drag than a smooth plate and an ideal tip. (0.85·15 J/g·rubber + m·g·(h + 5 m))/(m·g·
 * sink_min). Each bound is generous (common practice, no source), and all hold at once in no model. Rising air is the way
 * to fly longer.
 */
export function ceilingTime({ rubberMass, height, ...body }: Bounded): number {
  const { sink } = minimumSink({
    ...body,
    plateFactor: 1,
    fixedDrag: 0,
    spanEfficiency: 1,
    usableLift: mostLift,
  });
  const start = { energy: mostEnergy * rubberMass, height: height + allowance, mass: body.mass, sink };
  return timeInTheAir(start, mostEfficiency);
}
