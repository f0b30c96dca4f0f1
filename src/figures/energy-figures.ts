import { gravity } from '../flight/gravity.ts';
import type { FigureDefinition } from './definition.ts';
import {
  applied,
  equals,
  type Formula,
  fraction,
  integral,
  minus,
  number,
  power,
  product,
  root,
  sum,
  times,
  total,
} from './formula.ts';
import { by, orElse, where } from './formula-line.ts';
import { type Given, shownCount } from './given.ts';
import { readEnergyOfRubber } from './rubber-energy.ts';
import { skeinFactors } from './rubber-terms.ts';
import { shownGravity } from './shown-gravity.ts';
import { readSkeinMass } from './skein-readings.ts';
import { motorCount, numberedMotors } from './subject.ts';
import * as the from './symbols.ts';

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
    moves:
      'Winding closer to the break and a better batch raise it; cold, age and a long wait after winding lower it.',
    formula: [
      by(
        fraction(product(number('2'), the.pi, integral(the.torque, the.turn)), the.skeinMass),
        'of the motor’s torque log',
      ),
      orElse(
        product(
          the.energyOfTest,
          fraction(
            applied(the.work, applied(the.stretch, the.woundShare)),
            applied(the.work, applied(the.stretch, the.woundShareOfTest)),
          ),
        ),
        'of the batch’s torque test',
      ),
      orElse(
        product(
          the.energyOut,
          fraction(
            applied(the.work, applied(the.stretch, the.woundShare)),
            applied(the.work, the.stretchOfTest),
          ),
        ),
        'of the batch’s stretch test',
      ),
      orElse(
        product(
          the.energyAtBreak,
          fraction(
            applied(the.work, applied(the.stretch, the.woundShare)),
            applied(the.work, the.breakStretch),
          ),
        ),
        'of rubber in general',
      ),
      where(
        equals(
          applied(the.stretch, the.woundShare),
          root(
            sum(
              number('1'),
              product(power(the.woundShare, '2'), minus(power(the.breakStretch, '2'), number('1'))),
            ),
          ),
        ),
      ),
      where(equals(applied(the.work, the.stretch), integral(the.stress, the.stretch)), 'from slack'),
    ],
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
    moves: 'More rubber, better rubber or more turns raise it.',
    formula: [by(total(product(the.count, the.skeinMass, the.energyOfRubber)))],
    substitution: { units: ['J'], of: energyWithNumbers },
    source: 'definition',
    range: 'as the energy per gram of rubber; all motors running',
    compute: (from, subject) => {
      const run = subject.flown?.flight.motorsRun ?? null;
      if (run !== null && run < motorCount(subject.design))
        return from.absent('needs a flight on which all motors ran');
      return numberedMotors(subject.design).reduce((sum, motor) => {
        const energy = from.motorFigure('energy-per-gram-of-rubber', motor.index);
        return sum + from.count(motor.motor.count, 'motors') * readSkeinMass(from, subject, motor) * energy;
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
    moves:
      'More rubber on the same airframe, better rubber or more turns raise it; a heavier airframe lowers it.',
    formula: [by(fraction(the.energy, the.mass))],
    substitution: {
      units: ['J/g'],
      of: (given) => fraction(given.figure('stored-energy', 'J'), given.figure('flying-mass', 'g')),
    },
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
    moves:
      'As the energy per gram: more or better rubber and more turns raise it, a heavier airframe lowers it.',
    formula: [by(fraction(the.energy, product(the.mass, the.gravity)))],
    substitution: {
      units: ['m'],
      of: (given) => fraction(given.figure('energy-per-gram', 'J/kg'), shownGravity),
    },
    source: 'definition',
    range: 'as the stored energy',
    compute: (from) => from.figure('energy-per-gram') / gravity,
  },
];

/** The mass and the energy per gram of each kind of motor; null where an official's weight was shared out among several. */
function energyWithNumbers(given: Given): Formula | null {
  const groups = given.groups((term) => term.from === 'figure');
  const parts = groups.flatMap((group) => {
    const skein = skeinFactors(group);
    const count = group.count('motors') ?? 1;
    if (skein === null) return [];
    const ofAll = group.inputs[0]?.quantity.origin === 'inspected';
    const many = count === 1 || ofAll ? [] : [shownCount(count)];
    return [times(...many, ...skein, group.figure('energy-per-gram-of-rubber', 'J/g'))];
  });
  return parts.length === groups.length ? sum(...parts) : null;
}
