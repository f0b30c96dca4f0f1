import { effectiveDihedral } from '../airframe/dihedral.ts';
import { meanAerodynamicChord, projectedArea } from '../airframe/planform.ts';
import type { FigureDefinition } from './definition.ts';
import {
  applied,
  equals,
  type Formula,
  fraction,
  integral,
  power,
  product,
  sum,
  times,
  total,
  words,
} from './formula.ts';
import { by, orElse } from './formula-line.ts';
import { type Given, shownInput } from './given.ts';
import * as the from './symbols.ts';
import { panelLengths, readPanels, readSpan } from './wing-readings.ts';

/** Figures of the wing's shape. */
export const wingFigures: readonly FigureDefinition[] = [
  {
    id: 'span',
    name: 'Span',
    unit: 'm',
    of: 'model',
    scope: 'entry',
    explanation:
      'How far it is from wing tip to wing tip, seen from above. An official measurement stands instead of the builder’s own.',
    moves: 'Nothing but the wing itself; steeper dihedral brings the tips a little closer together.',
    formula: [by(the.span, 'as measured or inspected')],
    source: 'measured',
    range: 'any wing',
    compute: (from, { design }) => readSpan(from, design),
  },
  {
    id: 'wing-area',
    name: 'Wing area',
    unit: 'm2',
    of: 'model',
    scope: 'entry',
    explanation:
      'The area of the wing seen from above, both halves, without the tailplane. It is added up from the wing’s panels where they are given, each shortened by its dihedral; else the stated area is taken; else span times mean chord. An inspected area stands instead of all of them.',
    moves: 'A longer span or a wider chord raises it; dihedral lowers it a little.',
    formula: [
      by(
        equals(
          the.area,
          total(
            product(the.panelLength, applied(the.cosine, the.dihedral), sum(the.rootChord, the.tipChord)),
          ),
        ),
        'over the panels of one half',
      ),
      orElse(words('the stated area')),
      orElse(product(the.span, the.chord)),
    ],
    substitution: { units: ['m2', 'dm2'], of: areaWithNumbers },
    source: 'geometry of trapezoids',
    range: 'panels with straight edges',
    compute: (from, { design }) => {
      const { wing, inspected } = design;
      if (inspected !== null && inspected.wingArea !== null)
        return from.value(inspected.wingArea, "the wing's inspected area");
      if (wing.panels !== null) return projectedArea(readPanels(from, wing.panels, 'sweep does not matter'));
      if (wing.area !== null) return from.value(wing.area, "the wing's area");
      return from.need(wing.chord, "the wing's panels, area or chord") * readSpan(from, design);
    },
  },
  {
    id: 'mean-chord',
    name: 'Mean chord',
    unit: 'm',
    of: 'model',
    scope: 'entry',
    explanation: 'The chord of a plain rectangular wing with the same span and area.',
    moves: 'More area on the same span raises it, more span for the same area lowers it.',
    formula: [by(fraction(the.area, the.span))],
    substitution: {
      units: ['m', 'mm'],
      of: (given) => fraction(given.figure('wing-area', 'm2'), given.figure('span', 'm')),
    },
    source: 'geometry',
    range: 'any wing',
    compute: (from) => from.figure('wing-area') / from.figure('span'),
  },
  {
    id: 'mean-aerodynamic-chord',
    name: 'Mean aerodynamic chord',
    unit: 'm',
    of: 'model',
    scope: 'entry',
    explanation:
      'The chord that stands for the whole wing when it comes to balance and stability: wide parts of the wing count for more. Without panels the wing is taken as straight, with the same chord everywhere.',
    moves: 'A wider chord raises it; at the same area a wing that tapers more has a larger one.',
    formula: [
      by(
        fraction(integral(power(the.chord, '2'), the.outwards), integral(the.chord, the.outwards)),
        'over the half span',
      ),
      orElse(fraction(the.area, the.span), 'without panels'),
    ],
    source: 'standard definition (NACA Technical Report 751, 1942)',
    range: 'panels with straight edges',
    compute: (from, { design }) => {
      const { panels } = design.wing;
      if (panels !== null)
        return meanAerodynamicChord(readPanels(from, panels, 'sweep does not matter')).chord;
      from.suppose('the wing is straight, with the same chord everywhere');
      return from.figure('mean-chord');
    },
  },
  {
    id: 'aspect-ratio',
    name: 'Aspect ratio',
    unit: '1',
    of: 'model',
    scope: 'entry',
    explanation:
      'How slender the wing is: span over mean chord. A slender wing loses less to its tip vortices, but its narrow chord has more profile drag at model speeds.',
    moves: 'More span raises it, more chord lowers it.',
    formula: [by(fraction(power(the.span, '2'), the.area))],
    substitution: {
      units: ['1'],
      of: (given) => fraction(power(given.figure('span', 'm'), '2'), given.figure('wing-area', 'm2')),
    },
    source: 'standard definition',
    range: 'any wing',
    compute: (from) => from.figure('span') ** 2 / from.figure('wing-area'),
  },
  {
    id: 'effective-dihedral',
    name: 'Effective dihedral',
    unit: 'rad',
    of: 'model',
    scope: 'entry',
    explanation:
      'The angle of a plain V-shaped wing that would roll out of a sideslip as willingly as this one. Dihedral far out on the span counts for more than near the middle.',
    moves: 'Steeper panels raise it, those near the tips the most.',
    formula: [
      by(
        fraction(
          integral(product(the.dihedral, the.chord, the.outwards), the.outwards),
          integral(product(the.chord, the.outwards), the.outwards),
        ),
        'over the half span',
      ),
    ],
    source: 'strip theory of the rolling moment in a sideslip',
    range: 'small sideslip, attached flow; the fuselage and the height of the wing are left out',
    compute: (from, { design }) => {
      const { panels } = design.wing;
      if (panels === null || panels.every((panel) => panel.dihedral === null))
        return from.absent("needs the dihedral of the wing's panels");
      return effectiveDihedral(readPanels(from, panels, 'sweep does not matter'));
    },
  },
];

/** The panels of one half with their numbers, else chord times span; null for an area as it was measured. */
function areaWithNumbers(given: Given): Formula | null {
  const [first, second] = given.inputs;
  if (first === undefined || second === undefined) return null;
  if (given.inputs.length === 2) return times(shownInput(second, 'm'), shownInput(first, 'm'));
  const panels = given.groups((term) => term.from === 'input' && term.name === panelLengths);
  return sum(
    ...panels.map((panel) => {
      const [length, root, tip, angle] = panel.inputs.map((input) =>
        shownInput(input, input.quantity.kind === 'angle' ? '°' : 'm'),
      );
      const both = sum(root!, tip!);
      return angle === undefined ? times(length!, both) : times(length!, applied(the.cosine, angle), both);
    }),
  );
}
