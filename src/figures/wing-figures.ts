import { effectiveDihedral } from '../airframe/dihedral.ts';
import { meanAerodynamicChord, projectedArea } from '../airframe/planform.ts';
import type { FigureDefinition } from './definition.ts';
import { readPanels, readSpan } from './wing-readings.ts';

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
    formula: 'b, as measured or inspected',
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
      'The area of the wing seen from above, both halves, without the tailplane. It is added up from the wing’s panels where they are given, each narrowed by its dihedral; else the stated area is taken; else span times mean chord. An inspected area stands instead of all of them.',
    formula: 'S = Σ 2·l·cosΓ·(c_root + c_tip)/2, else the stated area, else b·c',
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
    formula: 'S/b',
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
    formula: '∫c² dy / ∫c dy over the half span, else S/b',
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
    formula: 'b²/S',
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
    formula: '∫Γ(y)·c(y)·y dy / ∫c(y)·y dy over the half span',
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
