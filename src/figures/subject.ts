import type { Batch } from '../model/batch.ts';
import type { BenchLogs } from '../model/bench-log.ts';
import type { Design, Motor } from '../model/design.ts';
import type { Flight, Glide } from '../model/entry.ts';
import type { Quantity } from '../quantities/quantity.ts';
import type { OfficialTime } from '../timing/official-time.ts';

/** What figures are worked out of: an aircraft in one setup, and the flight chosen for it, if any. */
export interface Subject {
  /** In the setup at hand, inspections laid over it (see `inspect.ts`). */
  readonly design: Design;
  /** Every batch of rubber that is known, by id. */
  readonly batches: ReadonlyMap<string, Batch>;
  /** The bench logs that its motors name, those that could be read. */
  readonly logs: BenchLogs;
  /** The test glides that count for this setup (see `thrown-glides.ts`). */
  readonly glides: readonly ThrownGlide[];
  /** A flight's own mass; it wins over what the design weighs. */
  readonly mass: Quantity | null;
  /** The flight that figures of a flight are of; null where the aircraft has none. */
  readonly flown: { readonly flight: Flight; readonly official: OfficialTime } | null;
}

/** A test glide, with the aircraft as it was thrown. */
export interface ThrownGlide {
  readonly glide: Glide;
  readonly design: Design;
}

/** One item of `motors` with its place in the list. */
export interface NumberedMotor {
  readonly motor: Motor;
  /** From 0. */
  readonly index: number;
  /** Follows a name in a sentence: " of motor 2", or nothing where the model has only one kind of motor. */
  readonly suffix: string;
}

/** The motors of a design with their numbers. */
export function numberedMotors(design: Design): readonly NumberedMotor[] {
  const alone = design.motors.length === 1;
  return design.motors.map((motor, index) => ({
    motor,
    index,
    suffix: alone ? '' : ` of motor ${index + 1}`,
  }));
}

/** How many motors the model carries, all kinds together. */
export function motorCount(design: Design): number {
  return design.motors.reduce((sum, motor) => sum + motor.count, 0);
}
