import { gravity } from '../flight/gravity.ts';
import type { FigureDefinition } from './definition.ts';
import { readEnergyOfRubber } from './rubber-energy.ts';
import { readSkeinMass } from './skein-readings.ts';
import { motorCount, numberedMotors } from './subject.ts';

/** Figures of the energy stored in the rubber. */
export const energyFigures: readonly FigureDefinition[] = [
  {
    id: 'energy-per-gram-of-rubber',
    name: 'Energy per gram of rubber',
    unit: 'J/kg',
    of: 'flight',
    scope: 'motor',
    explanation:
      'What a gram of the skein gives back at the turns wound. The motor’s own torque log wins, then a torque test of the batch it was made of, then a stretch test of the batch; else rubber in general is taken. A tenth fewer turns than break cost about three tenths of it.',
    formula:
      '2π∫Q dn/mass of the motor’s torque log, else e_test·W(λ(x))/W(λ(x_test)) of the batch’s torque test, else e_out·W(λ(x))/W(λ_test) of its stretch test, else e_break·W(λ(x))/W(λ_b); λ(x) = √(1 + x²(λ_b² − 1)), x = share of the break turns wound, W(λ) = ∫σ dλ',
    source:
      'L. R. G. Treloar, Transactions of the Faraday Society 40 (1944) 59; the batch’s own tests; work of a torque',
    range: 'wound to more than about 0.7 of the break turns; below that it reads low',
    compute: readEnergyOfRubber,
  },
  {
    id: 'stored-energy',
    name: 'Stored energy',
    unit: 'J',
    of: 'flight',
    scope: 'entry',
    explanation: 'The energy that all motors of the model hold when it is let go.',
    formula: 'Σ count × skein mass × energy per gram of rubber',
    source: 'definition',
    range: 'as the energy per gram of rubber; all motors running',
    compute: (from, subject) => {
      const run = subject.flown?.flight.motorsRun ?? null;
      if (run !== null && run < motorCount(subject.design))
        return from.absent('needs a flight on which all motors ran');
      return numberedMotors(subject.design).reduce((sum, motor) => {
        const energy = from.motorFigure('energy-per-gram-of-rubber', motor.index);
        return sum + motor.motor.count * readSkeinMass(from, subject, motor) * energy;
      }, 0);
    },
  },
  {
    id: 'energy-per-gram',
    name: 'Energy per gram',
    unit: 'J/kg',
    of: 'flight',
    scope: 'entry',
    explanation:
      'Stored energy for each gram of the flying model: how much there is to keep it up with, whatever its size.',
    formula: 'stored energy / m',
    source: 'definition',
    range: 'as the stored energy',
    compute: (from) => from.figure('stored-energy') / from.figure('flying-mass'),
  },
  {
    id: 'energy-height',
    name: 'Energy height',
    unit: 'm',
    of: 'flight',
    scope: 'entry',
    explanation: 'How high the rubber could lift the model if nothing were lost on the way.',
    formula: 'stored energy / (m·g)',
    source: 'definition',
    range: 'as the stored energy',
    compute: (from) => from.figure('energy-per-gram') / gravity,
  },
];
