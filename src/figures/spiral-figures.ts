import type { FigureDefinition } from './definition.ts';
import { fraction, product } from './formula.ts';
import { by } from './formula-line.ts';
import { readPolarGlide } from './polar-readings.ts';
import * as the from './symbols.ts';

/** Degrees in a radian. */
const degrees = 180 / Math.PI;

/** Figures of how the model behaves in a turn. */
export const spiralFigures: readonly FigureDefinition[] = [
  {
    id: 'spiral-balance',
    name: 'Spiral balance',
    unit: '1',
    of: 'flight',
    scope: 'entry',
    explanation:
      'Whether the model tightens a turn by itself or opens it: the fin’s arm in spans times the effective dihedral in degrees for each unit of lift. About 5 is neutral, more is stable, less winds in. A rule of thumb, no more; the fin’s size does not enter it.',
    moves: 'More dihedral or a longer arm of the fin raises it; flying slower, with more lift, lowers it.',
    formula: [
      by(
        product(fraction(the.finArm, the.span), fraction(the.effectiveDihedral, the.lift)),
        'at the lift of the slowest sink, by the polar',
      ),
    ],
    source: 'common practice, no source',
    range: 'models with dihedral and a fin behind the wing; no certificate of airworthiness',
    compute: (from, subject) => {
      const arm = from.need(subject.design.fin?.arm, "the fin's arm");
      const dihedral = from.figure('effective-dihedral') * degrees;
      return ((arm / from.figure('span')) * dihedral) / readPolarGlide(from, subject).lift;
    },
  },
];
