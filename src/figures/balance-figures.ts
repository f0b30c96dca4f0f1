import { downwashSlope, liftSlope, neutralPoint, tailEffect } from '../airframe/stability.ts';
import { readBalanceLength, readBalanceShare } from './balance-readings.ts';
import type { FigureDefinition } from './definition.ts';
import {
  equals,
  type Formula,
  fraction,
  minus,
  number,
  power,
  product,
  root,
  sum,
  times,
  words,
} from './formula.ts';
import { by, orElse, where } from './formula-line.ts';
import { type Given, shownInput } from './given.ts';
import * as the from './symbols.ts';

/** What is left of two nearly equal shares needs more of each. */
const digitsOfDifference = 5;

/** Figures of where the model balances and what that means. */
export const balanceFigures: readonly FigureDefinition[] = [
  {
    id: 'balance-point',
    name: 'Balance (CG)',
    unit: '1',
    kind: 'share',
    of: 'model',
    scope: 'entry',
    explanation:
      'Where the model balances, as a share of the mean aerodynamic chord behind that chord’s leading edge. So balances of wings of any shape can be compared.',
    moves: 'Weight in the tail moves it back, weight in the nose forward.',
    formula: [
      by(fraction(minus(the.balance, the.chordEdge), the.meanAerodynamicChord)),
      orElse(words('the stated share')),
    ],
    source: 'standard definition',
    range: 'any wing',
    compute: (from, { design }) => readBalanceShare(from, design),
  },
  {
    id: 'neutral-point',
    name: 'Neutral point',
    unit: '1',
    kind: 'share',
    of: 'model',
    scope: 'entry',
    explanation:
      'The balance at which the model would no longer find back to its speed by itself, as a share of the mean aerodynamic chord. A larger tail on a longer arm moves it back.',
    moves:
      'A larger or more slender tailplane, or a longer arm, moves it back; a wider chord of the wing moves it forward.',
    formula: [
      by(
        sum(
          number('0.25'),
          fraction(
            product(the.tailVolume, the.tailEffect),
            sum(number('1'), product(the.tailEffect, fraction(the.tailArea, the.area))),
          ),
        ),
      ),
      where(
        equals(
          the.tailEffect,
          product(fraction(the.tailSlope, the.wingSlope), minus(number('1'), the.downwash)),
        ),
      ),
      where(
        equals(
          the.slope,
          fraction(
            product(number('2'), the.pi, the.aspectRatio),
            sum(number('2'), root(sum(power(the.aspectRatio, '2'), number('4')))),
          ),
        ),
        'for wing and tailplane, each with its own aspect ratio',
      ),
      where(
        equals(the.downwash, fraction(product(number('2'), the.wingSlope), product(the.pi, the.aspectRatio))),
      ),
    ],
    source:
      'Anderson, Introduction to Flight, chapter 7; lift slopes by Helmbold 1942; the divisor because the arm runs from quarter-chord to quarter-chord',
    range:
      'tailplane behind the wing, attached flow; fuselage and propeller are left out, so it is an estimate, and its ± is that of the measures only',
    compute: (from, { design }) => {
      if (design.layout !== 'tail-aft')
        return from.absent('is worked out only for models with the tailplane behind the wing');
      const volume = from.figure('tail-volume');
      const tailArea = from.figure('tail-area');
      const tailSpan = from.need(design.tailplane?.span, "the tailplane's span");
      const aspectRatio = from.figure('aspect-ratio');
      const slope = liftSlope(aspectRatio);
      const effect = tailEffect(
        liftSlope((tailSpan * tailSpan) / tailArea),
        slope,
        downwashSlope(slope, aspectRatio),
      );
      return neutralPoint(volume, effect, tailArea / from.figure('wing-area'));
    },
  },
  {
    id: 'static-margin',
    name: 'Static margin',
    unit: '1',
    kind: 'share',
    of: 'model',
    scope: 'entry',
    explanation:
      'How far the balance lies ahead of the neutral point, in mean aerodynamic chords. More makes the model return to its speed more firmly; below zero it does not.',
    moves: 'Weight in the nose, a larger tailplane or a longer arm raises it.',
    formula: [by(minus(the.neutralPoint, the.balancePoint))],
    substitution: {
      units: ['%'],
      of: (given) =>
        minus(
          given.figure('neutral-point', '%', digitsOfDifference),
          given.figure('balance-point', '%', digitsOfDifference),
        ),
    },
    source: 'Anderson, Introduction to Flight, chapter 7',
    range: 'as the neutral point; no certificate of airworthiness',
    compute: (from) => from.figure('neutral-point') - from.figure('balance-point'),
  },
  {
    id: 'trim-ballast',
    name: 'Trim ballast',
    unit: 'kg/m',
    of: 'model',
    scope: 'entry',
    explanation:
      'How much weight in the nose moves the balance forward, for small shifts: the flying mass over the distance from the balance to the nose.',
    moves: 'A longer nose lowers it, a heavier model raises it.',
    formula: [
      by(fraction(the.mass, sum(the.balance, the.nose))),
      where(
        equals(
          the.ballast,
          fraction(product(the.mass, the.shift), minus(sum(the.balance, the.nose), the.shift)),
        ),
      ),
    ],
    substitution: { units: ['g/mm'], of: ballastWithNumbers },
    source: 'law of the lever',
    range: 'shifts that are small against the distance to the nose',
    compute: (from, { design }) => {
      const nose = from.need(design.nose, "the nose's length");
      return from.figure('flying-mass') / (readBalanceLength(from, design) + nose);
    },
  },
];

/** Where the balance is stated as a length; of a share, where the wing is taken as straight. */
function ballastWithNumbers(given: Given): Formula | null {
  const [nose, balance, more] = given.inputs;
  if (nose === undefined || balance === undefined || more !== undefined) return null;
  const behind =
    balance.quantity.kind === 'share'
      ? times(shownInput(balance, '1'), given.figure('mean-aerodynamic-chord', 'mm'))
      : shownInput(balance, 'mm');
  return fraction(given.figure('flying-mass', 'g'), sum(behind, shownInput(nose, 'mm')));
}
