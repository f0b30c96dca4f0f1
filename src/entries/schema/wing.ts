import * as z from 'zod';
import { limits } from '../source/limits.ts';
import { fields } from './fields.ts';
import { quantity } from './quantity-field.ts';
import { text } from './text-field.ts';

const length = (title: string, description: string, example: string) =>
  quantity('length', { floor: 'span' }).meta({ title, description, example });

/** One panel of one half of the wing. */
export const panel = fields({
  length: length('Length', 'Along the panel, from its root to its tip, not its projection', '900 mm'),
  root: quantity('length', { floor: 'chord' }).meta({
    title: 'Root chord',
    description: 'Chord at the end of the panel nearer the centre line',
    example: '300 mm',
  }),
  tip: quantity('length', { floor: 'chord' }).meta({
    title: 'Tip chord',
    description: 'Chord at the outer end of the panel',
    example: '180 mm',
  }),
  sweep: quantity('length', { negative: true })
    .meta({
      title: 'Sweep',
      description: "How far the tip's leading edge lies behind the root's; negative where it lies ahead",
      example: '40 mm',
    })
    .optional(),
  dihedral: quantity('angle', { floor: 'angle' })
    .meta({ title: 'Dihedral', description: 'Against the horizontal, upward positive', example: '18°' })
    .optional(),
});

const wingShape = {
  span: length('Span', 'Projected, from tip to tip', '3.20 m ± 5 mm'),
  panels: z
    .array(panel)
    .min(1)
    .max(limits.panels)
    .meta({
      title: 'Panels',
      description:
        'One half of the wing, panel by panel from the centre line outwards; the most exact way to give it',
      example: '[{ length: 900 mm, root: 300 mm, tip: 180 mm, dihedral: 3° }]',
    })
    .optional(),
  area: quantity('area', { floor: 'area' })
    .meta({ title: 'Area', description: 'Projected area of the wing, both halves', example: '87.6 dm2' })
    .optional(),
  chord: quantity('length', { floor: 'chord' })
    .meta({ title: 'Mean chord', description: 'Area divided by span', example: '274 mm' })
    .optional(),
  incidence: quantity('angle', { floor: 'angle' })
    .meta({ title: 'Incidence', description: 'Of the wing against the fuselage line', example: '3°' })
    .optional(),
  section: text()
    .meta({
      title: 'Section',
      description: 'The shape of the wing section, in words',
      example: 'undercambered, built up, 6 % camber',
    })
    .optional(),
};

/** The wing as an entry gives it. */
export const wing = fields(wingShape);

/** The wing as a setup changes it: any part of it. */
export const wingChanges = fields({ ...wingShape, span: wingShape.span.optional() });
