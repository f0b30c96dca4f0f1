import type { Reader } from './definition.ts';
import { readEnergyOfWinding } from './rubber-energy.ts';
import { readSkeinMass } from './skein-readings.ts';
import { numberedMotors, type Subject } from './subject.ts';

/** Energy in J of the turns that were still in at landing; none where the flight does not say. */
export function readEnergyLeft(from: Reader, subject: Subject): number {
  const left = subject.flown?.flight.turnsLeft ?? [];
  if (left.length === 0) return 0;
  return numberedMotors(subject.design).reduce((sum, motor) => {
    const quantity = left.length > 1 ? left[motor.index] : left[0];
    const turns = from.need(quantity, `the turns left${motor.suffix}`);
    const energy = readEnergyOfWinding(from, subject, motor, {
      turns: () => turns,
      share: () => turns / from.motorFigure('break-turns', motor.index),
    });
    return sum + from.count(motor.motor.count, 'motors') * readSkeinMass(from, subject, motor) * energy;
  }, 0);
}
