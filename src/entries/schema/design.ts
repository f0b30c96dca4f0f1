import * as z from 'zod';
import { limits } from '../source/limits.ts';
import { fields } from './fields.ts';
import { motor } from './motor.ts';
import { oneOrMany } from './one-or-many.ts';
import { balance, count, quantity } from './quantity-field.ts';
import { fileName, text } from './text-field.ts';
import { wing, wingChanges } from './wing.ts';
import { word } from './word-field.ts';

/** The words for the declared facts of a design; eligibility and divisions use the same. */
export const factWords = {
  control: ['free', 'guided'],
  onboard: ['release', 'dethermaliser', 'locator', 'altimeter', 'stabiliser'],
  layout: ['tail-aft', 'canard', 'tandem', 'tailless'],
  origin: ['own', 'plan', 'kit'],
} as const;

const tailplane = fields({
  span: quantity('length', { floor: 'span' })
    .meta({ title: 'Span', description: 'Of the tailplane, projected, tip to tip', example: '900 mm' })
    .optional(),
  area: quantity('area', { floor: 'area' })
    .meta({ title: 'Area', description: 'Projected area of the tailplane', example: '16 dm2' })
    .optional(),
  arm: quantity('length', { floor: 'arm' })
    .meta({
      title: 'Arm',
      description: "From the wing's quarter-chord to the tailplane's quarter-chord",
      example: '1.35 m',
    })
    .optional(),
  incidence: quantity('angle', { floor: 'angle' })
    .meta({
      title: 'Incidence',
      description: 'Of the tailplane against the fuselage line',
      example: '0°',
    })
    .optional(),
});

const fin = fields({
  area: quantity('area', { floor: 'area' })
    .meta({ title: 'Area', description: 'Of all fins together', example: '7 dm2' })
    .optional(),
  arm: quantity('length', { floor: 'arm' })
    .meta({ title: 'Arm', description: "From the wing's quarter-chord to the fin's", example: '1.4 m' })
    .optional(),
  count: count(1).meta({ title: 'How many', description: 'Number of fins', example: '1' }).optional(),
});

const mass = fields({
  airframe: quantity('mass', { floor: 'mass' })
    .meta({
      title: 'Airframe mass',
      description: 'Ready to fly, without rubber',
      example: '612 g',
    })
    .optional(),
  flying: quantity('mass', { floor: 'mass' })
    .meta({ title: 'Flying mass', description: 'Ready to fly, with all its rubber', example: '643 g' })
    .optional(),
  parts: z
    .record(text(), quantity('mass', { floor: 'mass' }))
    .meta({
      title: 'Parts',
      description: 'Masses of parts, under names of your own',
      example: '{ wing: 240 g, tail: 38 g }',
    })
    .optional(),
});

const trim = fields({
  turn: text()
    .meta({
      title: 'Turn',
      description: 'Which way it turns, under power and in the glide',
      example: 'left under power and in the glide',
    })
    .optional(),
  'down-thrust': quantity('angle', { floor: 'angle' })
    .meta({ title: 'Down-thrust', description: 'Of the thrust line, downward positive', example: '3°' })
    .optional(),
  'side-thrust': quantity('angle', { floor: 'angle' })
    .meta({ title: 'Side thrust', description: 'Of the thrust line, right positive', example: '2°' })
    .optional(),
  warps: text()
    .meta({ title: 'Warps', description: 'Washout and washin, meant or not', example: 'none meant' })
    .optional(),
});

const photo = fields({
  file: fileName().meta({
    title: 'File',
    description: 'Picture file beside the entry',
    example: 'bench.jpg',
  }),
  alt: text().meta({
    title: 'What it shows',
    description: 'What one sees on the picture, for readers who cannot see it',
    example: '"The finished model on the bench, from above"',
  }),
});

const declaredShape = {
  onboard: oneOrMany(word(factWords.onboard))
    .meta({
      title: 'On board',
      description: 'Devices carried; a stabiliser makes the model guided',
      example: '[release, dethermaliser]',
    })
    .optional(),
  origin: word(factWords.origin)
    .meta({ title: 'Origin', description: 'Own design, from a plan, or from a kit', example: 'own' })
    .optional(),
  layout: word(factWords.layout)
    .meta({
      title: 'Layout',
      description: 'Where the tailplane is; stability figures are for tail-aft',
      example: 'tail-aft',
    })
    .optional(),
  photos: z
    .array(photo)
    .max(limits.items)
    .meta({
      title: 'Photos',
      description: 'At most 12 pictures beside the entry, each with what it shows',
      example: '[{ file: bench.jpg, alt: "The finished model on the bench, from above" }]',
    })
    .optional(),
};

const behindWingShape = {
  tailplane: tailplane
    .meta({
      title: 'Tailplane',
      description: 'The horizontal tail, or the foreplane of a canard',
      example: '{ span: 900 mm, area: 16 dm2, arm: 1.35 m, incidence: 0° }',
    })
    .optional(),
  fin: fin
    .meta({
      title: 'Fin',
      description: 'The vertical tail',
      example: '{ area: 7 dm2, arm: 1.4 m, count: 1 }',
    })
    .optional(),
  balance: balance()
    .meta({
      title: 'Balance',
      description:
        'Centre of gravity behind the leading edge at the centre line, or a share of the mean aerodynamic chord',
      example: '104 mm',
    })
    .optional(),
  nose: quantity('length', { floor: 'arm' })
    .meta({
      title: 'Nose',
      description: 'How far ahead of the leading edge at the centre line nose ballast can sit',
      example: '310 mm',
    })
    .optional(),
};

const builtShape = {
  structure: z
    .record(text(), text())
    .meta({
      title: 'Structure',
      description: 'How it is built and covered, in words, under names of your own',
      example: '{ wing: balsa and tissue, finish: two coats of dope }',
    })
    .optional(),
  trim: trim
    .meta({
      title: 'Trim',
      description: 'How it is trimmed to fly',
      example: '{ turn: left under power and in the glide, down-thrust: 3° }',
    })
    .optional(),
};

const control = word(factWords.control).meta({
  title: 'Control',
  description:
    'Free, where after launch no signal is sent but one that ends the flight and no sensor moves a surface; else guided',
  example: 'free',
});

const massField = mass.meta({
  title: 'Mass',
  description: 'Airframe (without rubber) or flying (with it); parts where you weighed them',
  example: '{ airframe: 612 g }',
});

const motors = z.array(motor).min(1).max(limits.motors).meta({
  title: 'Motors',
  description: 'One item for each kind of motor',
  example: '[{ count: 2, rotation: clockwise }]',
});

const wingMeta = {
  title: 'Wing',
  description: 'Span, and panels or area or mean chord',
  example: '{ span: 3.20 m ± 5 mm, area: 87.6 dm2 }',
};

/** The design as an entry gives it. */
export const designShape = {
  control,
  ...declaredShape,
  wing: wing.meta(wingMeta),
  ...behindWingShape,
  mass: massField,
  ...builtShape,
  motors,
};

/** The design as a setup changes it: any of it, and any part of it. */
export const designChangesShape = {
  control: control.optional(),
  ...declaredShape,
  wing: wingChanges.meta(wingMeta).optional(),
  ...behindWingShape,
  mass: massField.optional(),
  ...builtShape,
  motors: motors.optional(),
};
