import { ceilingTime } from '../flight/ceiling.ts';
import { energyUse, type Start, timeInTheAir } from '../flight/prediction.ts';
import type { FigureDefinition, Reader } from './definition.ts';
import { readEnergyLeft } from './energy-left.ts';
import { equals, fraction, minus, number, product, quantity, sum, times } from './formula.ts';
import { by, where } from './formula-line.ts';
import { readSinkAsFlown } from './glide-readings.ts';
import { readHeightAboveLanding } from './launch-readings.ts';
import { readBody } from './polar-readings.ts';
import { motorCount, type Subject } from './subject.ts';
import * as the from './symbols.ts';

/** Figures of what the model's energy should come to in the air, and of what it did. */
export const predictionFigures: readonly FigureDefinition[] = [
  {
    id: 'energy-use',
    name: 'Energy use',
    unit: '1',
    kind: 'share',
    of: 'flight',
    scope: 'entry',
    explanation:
      'What share of the energy at launch, of rubber and height, turned into time in the air; turns still in at landing are taken off. Propellers, a stall or a steep climb take the rest. In still air more than about 80 % is rare; rising air adds to it.',
    moves: 'A better propeller, a calmer climb, better trim and rising air raise it.',
    formula: [
      by(
        fraction(
          product(the.mass, the.gravity, the.sink, the.bestTime),
          sum(minus(the.energy, the.energyLeft), product(the.mass, the.gravity, the.height)),
        ),
      ),
    ],
    source: 'energy balance',
    range:
      'well-trimmed models in still air; as sure as sinking speed and stored energy; motors wound to less than about 0.7 of their break turns hold more than is reckoned, so it reads high there',
    compute: (from, subject) => {
      const time = from.figure('best-time');
      const start = readStart(from, subject);
      return energyUse({ ...start, energy: start.energy - readEnergyLeft(from, subject) }, time);
    },
  },
  {
    id: 'predicted-time',
    name: 'Predicted time',
    unit: 's',
    of: 'flight',
    scope: 'entry',
    explanation:
      'How long the model’s own figures let it stay up in still air when it is well trimmed: a good share of the rubber’s energy as height, let down at its sinking speed. The window, twice the ± to either side, is wide, for drag and propeller are often estimates. Without a flight it is for a throw by hand and motors wound as usual.',
    moves: 'More energy per gram and a lower sinking speed raise it.',
    formula: [
      by(
        fraction(
          sum(product(the.efficiency, the.energy), product(the.mass, the.gravity, the.height)),
          product(the.mass, the.gravity, the.sink),
        ),
        'with a window of two u either side',
      ),
    ],
    source: 'energy balance; efficiency of small propellers: UIUC Propeller Data Site (DA4002)',
    range: 'still air, a well-trimmed model; as sure as sinking speed and stored energy',
    compute: (from, subject) =>
      timeInTheAir(
        readStart(from, subject),
        from.assume(motorCount(subject.design) > 1 ? 'efficiency-of-several' : 'efficiency-of-one'),
      ),
  },
  {
    id: 'ceiling-time',
    name: 'Ceiling time',
    unit: 's',
    of: 'flight',
    scope: 'entry',
    explanation:
      'A time that the model should not exceed in still air, with the best of everything: 15 J from each gram of rubber, a propeller that wastes 15 % of it, a wing with no more drag than a smooth plate. Five metres are added to the launch height for a strong throw. It is generous; rising air can carry a model beyond it.',
    moves: 'A larger share of rubber and a lower wing loading raise it.',
    formula: [
      by(
        fraction(
          sum(the.mostEnergy, product(the.mass, the.gravity, the.mostHeight)),
          product(the.mass, the.gravity, the.leastSink),
        ),
        'the sinking speed that of a polar with the drag of a smooth plate and an ideal tip, no other drag, and lift coefficients up to 1.5',
      ),
      where(equals(the.mostEnergy, times(number('0.85'), quantity('15', 'J/g'), the.rubberMass))),
      where(equals(the.mostHeight, sum(the.height, quantity('5', 'm')))),
    ],
    source: 'energy balance with bounds from common practice, no source',
    range:
      'still air; an upper bound, no prediction; its ± is that of the measures, the bounds count as given',
    compute: (from, subject) =>
      ceilingTime({
        ...readBody(from, subject),
        rubberMass: from.figure('rubber-mass'),
        height: readHeightAboveLanding(from, subject),
      }),
  },
];

function readStart(from: Reader, subject: Subject): Start {
  return {
    energy: from.figure('stored-energy'),
    height: readHeightAboveLanding(from, subject),
    mass: from.figure('flying-mass'),
    sink: readSinkAsFlown(from, subject),
  };
}
