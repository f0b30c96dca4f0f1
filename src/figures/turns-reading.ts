import type { Reader } from './definition.ts';
import type { NumberedMotor, Subject } from './subject.ts';

/** True where the flight states turns for each item of motors, not one number for all. */
export function turnsDiffer(subject: Subject): boolean {
  return (subject.flown?.flight.turns.length ?? 0) > 1;
}

/** Turns of a motor at launch; null where there is no flight or it does not state them. */
export function readTurns(from: Reader, subject: Subject, motor: NumberedMotor): number | null {
  const turns = subject.flown?.flight.turns ?? [];
  const quantity = turns.length > 1 ? turns[motor.index] : turns[0];
  if (quantity === undefined) return null;
  return from.value(
    quantity,
    turns.length > 1 ? `the turns of the flight${motor.suffix}` : 'the turns of the flight',
  );
}
