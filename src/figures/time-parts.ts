import { gravity } from '../flight/gravity.ts';
import type { Reader } from './definition.ts';
import { type DerivedNumbers, evaluateTogether } from './derived-numbers.ts';
import { readEnergyLeft } from './energy-left.ts';
import type { Figure } from './figure.ts';
import { applied, equals, fraction, minus, product, sum, symbol } from './formula.ts';
import { by, type FormulaLine, where } from './formula-line.ts';
import { readSinkAsFlown } from './glide-readings.ts';
import { readHeightAboveLanding } from './launch-readings.ts';
import type { Subject } from './subject.ts';
import * as the from './symbols.ts';

/**
 * What a time in the air is made of: time = use × height / sink. Here in the order of that product; each with uncertainty
 * by the same law as every figure, absent with its reason where an input is missing.
 */
export interface TimeParts {
  /** The official time of the flight, s. */
  readonly time: Figure;
  /** The share of the energy that turned into that time. */
  readonly use: Figure;
  /** Energy at launch, of rubber and height, without that of the turns left, over the weight; m. */
  readonly height: Figure;
  /** Sinking speed at the mass flown, m/s. */
  readonly sink: Figure;
}

/** The parts of the flight a subject is of; they multiply to its time, since the energy use is worked out from it. */
export function timeParts(subject: Subject): TimeParts {
  return evaluateTogether(subject, timePartNumbers(subject));
}

/** What the parts are worked out of, to be evaluated along with other numbers. */
export function timePartNumbers(subject: Subject): DerivedNumbers<TimeParts> {
  return {
    numbers: [
      { id: 'flown-time', unit: 's', compute: (from) => from.figure('best-time') },
      { id: 'flown-use', unit: '1', compute: (from) => from.figure('energy-use') },
      { id: 'flown-height', unit: 'm', compute: (from) => readEnergyHeight(from, subject) },
      { id: 'flown-sink', unit: 'm/s', compute: (from) => readSinkAsFlown(from, subject) },
    ],
    from: ([time, use, height, sink]) => ({ time: time!, use: use!, height: height!, sink: sink! }),
  };
}

function readEnergyHeight(from: Reader, subject: Subject): number {
  const energy = from.figure('stored-energy') - readEnergyLeft(from, subject);
  return energy / (from.figure('flying-mass') * gravity) + readHeightAboveLanding(from, subject);
}

const use = symbol('U', 'energy use');
const energyHeight = symbol('H', 'energy height at launch');

/** ln of a letter of one aircraft over that of the other. */
function logOfRatio(letter: string) {
  return applied(symbol('ln', ''), fraction(symbol(letter, '', '1'), symbol(letter, '', '2')));
}

/** How the parts make a time, and the ratio of two. */
export const timePartsFormula: readonly FormulaLine[] = [
  by(equals(the.time, fraction(product(use, energyHeight), the.sink))),
  where(
    equals(
      energyHeight,
      sum(fraction(minus(the.energy, the.energyLeft), product(the.mass, the.gravity)), the.height),
    ),
  ),
  by(equals(logOfRatio('t'), minus(sum(logOfRatio('H'), logOfRatio('U')), logOfRatio('w')))),
];
