import type { FigureDefinition } from './definition.ts';
import { fraction, minus, product, sum, times } from './formula.ts';
import { by } from './formula-line.ts';
import { shownInput } from './given.ts';
import * as the from './symbols.ts';

const noTailplane = 'a tailless model has no tailplane';

/** Figures of the tail's size and setting. */
export const tailFigures: readonly FigureDefinition[] = [
  {
    id: 'tail-area',
    name: 'Tailplane area',
    unit: 'm2',
    of: 'model',
    scope: 'entry',
    explanation: 'The area of the tailplane seen from above (of the foreplane, where the tail goes first).',
    moves: 'Nothing but the tailplane itself.',
    formula: [by(the.tailArea, 'as measured')],
    source: 'measured',
    range: 'models with a tailplane',
    compute: (from, { design }) => {
      if (design.layout === 'tailless') return from.absent(noTailplane);
      return from.need(design.tailplane?.area, "the tailplane's area");
    },
  },
  {
    id: 'lifting-area',
    name: 'Lifting area',
    unit: 'm2',
    of: 'model',
    scope: 'entry',
    explanation:
      'Wing and tailplane together, seen from above: what many classes limit. Of a tailless model it is the wing alone.',
    moves: 'A larger wing or tailplane raises it.',
    formula: [by(sum(the.area, the.tailArea))],
    substitution: {
      units: ['dm2'],
      of: (given) =>
        given.terms.length < 2
          ? null
          : sum(given.figure('wing-area', 'dm2'), given.figure('tail-area', 'dm2')),
    },
    source: 'definition of model classes',
    range: 'any layout',
    compute: (from, { design }) => {
      const wing = from.figure('wing-area');
      return design.layout === 'tailless' ? wing : wing + from.figure('tail-area');
    },
  },
  {
    id: 'tail-volume',
    name: 'Tail volume',
    unit: '1',
    of: 'model',
    scope: 'entry',
    explanation:
      'How much the tailplane has to say against the wing: its area times its arm, in measures of the wing’s area and chord. A larger one lets the balance lie further back.',
    moves:
      'A larger tailplane or a longer arm raises it; a larger wing, and above all a wider chord, lowers it.',
    formula: [by(fraction(product(the.tailArea, the.tailArm), product(the.area, the.meanAerodynamicChord)))],
    substitution: {
      units: ['1'],
      of: (given) => {
        const [arm] = given.inputs;
        return arm === undefined
          ? null
          : fraction(
              times(given.figure('tail-area', 'm2'), shownInput(arm, 'm')),
              times(given.figure('wing-area', 'm2'), given.figure('mean-aerodynamic-chord', 'm')),
            );
      },
    },
    source: 'standard definition',
    range: 'models with a tailplane; the arm runs from quarter-chord to quarter-chord',
    compute: (from, { design }) => {
      const area = from.figure('tail-area');
      const arm = from.need(design.tailplane?.arm, "the tailplane's arm");
      return (area * arm) / (from.figure('wing-area') * from.figure('mean-aerodynamic-chord'));
    },
  },
  {
    id: 'fin-volume',
    name: 'Fin volume',
    unit: '1',
    of: 'model',
    scope: 'entry',
    explanation:
      'How much the fin has to say in yaw: the area of all fins times their arm, in measures of the wing’s area and span.',
    moves: 'A larger fin or a longer arm raises it; more wing area or span lowers it.',
    formula: [by(fraction(product(the.finArea, the.finArm), product(the.area, the.span)))],
    substitution: {
      units: ['1'],
      of: (given) => {
        const [area, arm] = given.inputs;
        return area === undefined || arm === undefined
          ? null
          : fraction(
              times(shownInput(area, 'm2'), shownInput(arm, 'm')),
              times(given.figure('wing-area', 'm2'), given.figure('span', 'm')),
            );
      },
    },
    source: 'standard definition',
    range: 'models with a fin',
    compute: (from, { design }) => {
      const area = from.need(design.fin?.area, "the fin's area");
      const arm = from.need(design.fin?.arm, "the fin's arm");
      return (area * arm) / (from.figure('wing-area') * from.figure('span'));
    },
  },
  {
    id: 'decalage',
    name: 'Decalage',
    unit: 'rad',
    of: 'model',
    scope: 'entry',
    explanation:
      'How much more the wing is tilted up than the tailplane. With the balance it decides at what speed the model settles.',
    moves: 'Packing under the wing’s leading edge or the tailplane’s trailing edge raises it.',
    formula: [by(minus(the.wingIncidence, the.tailIncidence))],
    substitution: {
      units: ['°'],
      of: (given) => minus(...given.inputs.map((input) => shownInput(input, '°'))),
    },
    source: 'common practice, no source',
    range: 'models with a tailplane',
    compute: (from, { design }) => {
      if (design.layout === 'tailless') return from.absent(noTailplane);
      return (
        from.need(design.wing.incidence, "the wing's incidence") -
        from.need(design.tailplane?.incidence, "the tailplane's incidence")
      );
    },
  },
];
