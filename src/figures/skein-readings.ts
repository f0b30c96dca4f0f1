import type { Batch } from '../model/batch.ts';
import { geometricMass, skeinLength, strandsSection } from '../rubber/skein.ts';
import type { Reader } from './definition.ts';
import { type NumberedMotor, numberedMotors, type Subject } from './subject.ts';

/** The batch a motor's skein was made of; null where it names none that is known. */
export function batchOf(subject: Subject, { motor }: NumberedMotor): Batch | null {
  const id = motor.skein?.batch ?? null;
  return id === null ? null : (subject.batches.get(id) ?? null);
}

/** Density of a motor's rubber in kg/m³: of its batch, else the default. */
export function readDensity(from: Reader, subject: Subject, motor: NumberedMotor): number {
  const batch = batchOf(subject, motor);
  if (batch === null || batch.density === null) return from.assume('rubber-density');
  return from.value(batch.density, `the rubber's density of ${batch.label}`);
}

/** Section of all strands side by side in m², from strip and strands. */
export function readStrandsSection(from: Reader, subject: Subject, motor: NumberedMotor): number {
  const batch = batchOf(subject, motor);
  const own = motor.motor.skein?.strip ?? null;
  const strip = own ?? batch?.strip ?? null;
  const strands = motor.motor.skein?.strands ?? null;
  if (strip === null) return from.absent(`needs the strip of the skein${motor.suffix}`);
  if (strands === null) return from.absent(`needs the strands of the skein${motor.suffix}`);
  const whose = own === null && batch !== null ? ` of ${batch.label}` : motor.suffix;
  return strandsSection(
    from.count(strands, 'strands'),
    from.value(strip.width, `the strip's width${whose}`),
    from.value(strip.thickness, `the strip's thickness${whose}`),
  );
}

/** Made-up length of a skein in m; where it is not stated, what its mass and its strands give. */
export function readSkeinLength(from: Reader, subject: Subject, motor: NumberedMotor): number {
  const length = motor.motor.skein?.length ?? null;
  if (length !== null) return from.value(length, `the length of the skein${motor.suffix}`);
  if ((motor.motor.skein?.mass ?? null) === null)
    return from.absent(`needs the length of the skein${motor.suffix}`);
  return skeinLength(
    readSkeinMass(from, subject, motor),
    readDensity(from, subject, motor),
    readStrandsSection(from, subject, motor),
  );
}

/** Mass in kg that a skein's strip, strands and length give. */
export function geometricSkeinMass(from: Reader, subject: Subject, motor: NumberedMotor): number {
  const length = from.need(motor.motor.skein?.length, `the length of the skein${motor.suffix}`);
  return geometricMass(readDensity(from, subject, motor), readStrandsSection(from, subject, motor), length);
}

/** Mass of a skein in kg as its builder gives it: weighed, else by geometry. */
function skeinMassAsStated(from: Reader, subject: Subject, motor: NumberedMotor): number {
  const { skein } = motor.motor;
  if (skein === null) return from.absent(`needs the skein${motor.suffix}`);
  if (skein.mass !== null) return from.value(skein.mass, `the rubber's mass${motor.suffix}`);
  const mass = from.attempt(() => geometricSkeinMass(from, subject, motor));
  return mass ?? from.absent(`needs the mass of the skein${motor.suffix}, or its strip, strands and length`);
}

/** Mass of all rubber in kg as the builder gives it. */
export function rubberMassAsStated(from: Reader, subject: Subject): number {
  return numberedMotors(subject.design).reduce(
    (sum, motor) => sum + from.count(motor.motor.count, 'motors') * skeinMassAsStated(from, subject, motor),
    0,
  );
}

/** Mass of one skein in kg. An inspected mass of all rubber scales what the builder gives for each. */
export function readSkeinMass(from: Reader, subject: Subject, motor: NumberedMotor): number {
  const inspected = subject.design.inspected?.rubber ?? null;
  if (inspected === null) return skeinMassAsStated(from, subject, motor);
  const total = from.value(inspected, 'the inspected mass of rubber');
  // With one kind of motor the builder's own weight would cancel: it is not needed at all.
  if (subject.design.motors.length === 1) return total / from.count(motor.motor.count, 'motors');
  return (total * skeinMassAsStated(from, subject, motor)) / rubberMassAsStated(from, subject);
}

/** True where a skein's mass comes from scales, the builder's or the official's. */
export function wasWeighed(subject: Subject, { motor }: NumberedMotor): boolean {
  return (motor.skein?.mass ?? null) !== null || (subject.design.inspected?.rubber ?? null) !== null;
}
