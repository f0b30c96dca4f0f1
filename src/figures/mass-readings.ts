import type { Design } from '../model/design.ts';
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
export function readAirframeMass(from: Reader, { inspected, mass }: Design): number | null {
  const seen = inspected?.airframe ?? null;
  if (seen !== null) return from.value(seen, "the airframe's inspected mass");
  return mass.airframe === null ? null : from.value(mass.airframe, "the airframe's mass");
}

/** What the design weighs as it is launched, in kg; no flight's own mass is looked at. */
export function readDesignMass(from: Reader, subject: Subject): number {
  const { flying } = subject.design.mass;
  const airframe = readAirframeMass(from, subject.design);
  if (airframe === null) return from.need(flying, 'the flying mass');
  const sum = () => airframe + readRubberMass(from, subject);
  // Where both are stated the weighed whole helps out only if the rubber is not known.
  return flying === null ? sum() : (from.attempt(sum) ?? from.value(flying, 'the flying mass'));
}
