import type { Design } from '../model/design.ts';
import type { Quantity } from '../quantities/quantity.ts';
import type { Reader } from './definition.ts';
import { rubberMassAsStated } from './skein-readings.ts';
import type { Subject } from './subject.ts';

/** Mass of all rubber in kg; an official weighing stands instead of the builder's own. */
export function readRubberMass(from: Reader, subject: Subject): number {
  const inspected = subject.design.inspected?.rubber ?? null;
  if (inspected !== null) return from.value(inspected, 'the inspected mass of rubber');
  return rubberMassAsStated(from, subject);
}

/** Mass of the airframe in kg where it was weighed, by an official or the builder; null where it was not. */
export function readAirframeMass(from: Reader, design: Design): number | null {
  const weighed = weighedAirframe(design);
  return weighed === null ? null : from.value(weighed.quantity, weighed.name);
}

function weighedAirframe({ inspected, mass }: Design): { quantity: Quantity; name: string } | null {
  const seen = inspected?.airframe ?? null;
  if (seen !== null) return { quantity: seen, name: "the airframe's inspected mass" };
  return mass.airframe === null ? null : { quantity: mass.airframe, name: "the airframe's mass" };
}

/** What the design weighs as it is launched, in kg; no flight's own mass is looked at. */
export function readDesignMass(from: Reader, subject: Subject): number {
  const { flying } = subject.design.mass;
  const airframe = weighedAirframe(subject.design);
  if (airframe === null) return from.need(flying, 'the flying mass');
  const sum = () => from.value(airframe.quantity, airframe.name) + readRubberMass(from, subject);
  // Where both are stated the weighed whole helps out only if the rubber is not known.
  return flying === null ? sum() : (from.attempt(sum) ?? from.value(flying, 'the flying mass'));
}
