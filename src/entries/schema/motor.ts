import * as z from 'zod';
import { exact } from '../../quantities/make.ts';
import { parseQuantity } from '../../quantities/parse.ts';
import type { Quantity } from '../../quantities/quantity.ts';
import { fields } from './fields.ts';
import { leaf, type Reading, taken } from './leaf.ts';
import { oneOrMany } from './one-or-many.ts';
import { count, quantity } from './quantity-field.ts';
import { fileName, slug, text } from './text-field.ts';
import { word, yesNo } from './word-field.ts';

/** A cross-section of rubber strip, unstretched. */
export const strip = fields({
  width: quantity('length', { floor: 'strip' }).meta({
    title: 'Width',
    description: 'Width of the strip, slack',
    example: '1/8 in',
  }),
  thickness: quantity('length', { floor: 'strip' }).meta({
    title: 'Thickness',
    description: 'Thickness of the strip, slack',
    example: '1.1 mm',
  }),
});

const skein = fields({
  strip: strip
    .meta({
      title: 'Strip',
      description: 'Width and thickness of the rubber strip',
      example: '{ width: 1/8 in, thickness: 1.1 mm }',
    })
    .optional(),
  strands: count(1)
    .meta({ title: 'Strands', description: 'How many strands lie side by side', example: '10' })
    .optional(),
  length: quantity('length', { floor: 'skein-length' })
    .meta({
      title: 'Made-up length',
      description: 'Made up, slack and untwisted, end to end',
      example: '480 mm',
    })
    .optional(),
  mass: quantity('mass', { floor: 'mass' })
    .meta({ title: 'Mass', description: 'Of the rubber of one motor', example: '15.4 g' })
    .optional(),
  batch: slug()
    .meta({ title: 'Batch', description: 'The batch of rubber it was cut from', example: 'fen-a' })
    .optional(),
  braided: yesNo()
    .meta({ title: 'Braided', description: 'Whether the skein is braided', example: 'true' })
    .optional(),
  lubricant: text()
    .meta({ title: 'Lubricant', description: 'What the rubber is lubricated with', example: 'silicone' })
    .optional(),
  'broken-in': text()
    .meta({
      title: 'Breaking in',
      description: 'How the rubber was broken in',
      example: '3 stretches to 6 times',
    })
    .optional(),
});

const bladeAngle = fields({
  angle: quantity('angle', { floor: 'angle' }).meta({
    title: 'Blade angle',
    description: 'Angle of the blade against the disc of the propeller',
    example: '28°',
  }),
  at: quantity('length', { floor: 'propeller-diameter' }).meta({
    title: 'Radius',
    description: 'Distance from the shaft at which the angle was measured',
    example: '110 mm',
  }),
});

/** A length; a blade angle in its place is told how it is written, with its radius. */
const pitchLength = leaf({ kind: 'quantity', of: 'length', negative: false }, (text): Reading<Quantity> => {
  const angle = /^([\d.,]+)\s*(?:°|deg(?:rees?)?)(?:\s*(?:at|@|,)\s*(\d.*))?$/i.exec(text.trim());
  if (angle === null) return parseQuantity(text, 'length', { floor: 'pitch' });
  const form = `{ angle: ${angle[1]}°, at: ${angle[2] ?? '150 mm'} }`;
  const fault = { code: 'wrong-shape', found: text, accepted: `a length, or a map such as ${form}` };
  return angle[2] === undefined
    ? {
        ok: false,
        fault: {
          ...fault,
          message: `"${text}" is a blade angle, which gives a pitch only with the radius at which it was measured. Write it like \`${form}\`.`,
        },
      }
    : {
        ok: false,
        fault: { ...fault, message: `"${text}" is a blade angle. Write it as "${form}".`, suggestion: form },
      };
});

const propeller = fields({
  diameter: quantity('length', { floor: 'propeller-diameter' })
    .meta({ title: 'Diameter', description: 'Of the disc the blades sweep', example: '320 mm' })
    .optional(),
  pitch: z
    .union([pitchLength, bladeAngle])
    .meta({
      title: 'Pitch',
      description: 'Advance in one turn without slip, or the blade angle at a radius',
      example: '400 mm',
    })
    .optional(),
  blades: count(1)
    .meta({ title: 'Blades', description: 'Number of blades of one propeller', example: '2' })
    .optional(),
  after: word(['folds', 'freewheels', 'stops', 'never-stops'])
    .meta({
      title: 'After the motor run',
      description: 'What the propeller does when the rubber has run out',
      example: 'freewheels',
    })
    .optional(),
});

const turnsOfLog = quantity('turns')
  .meta({ title: 'Turns', description: 'Turns wound in before the log was taken', example: '54 x 10' })
  .optional();

const log = z.union([
  fileName(),
  fields({
    file: fileName().meta({
      title: 'File',
      description: 'Log file beside the entry',
      example: 'inner-thrust.csv',
    }),
    turns: turnsOfLog,
  }),
]);

// The format calls the centre line 0, and nothing has to be guessed about the unit of a zero.
const onSpan = { kind: 'quantity', of: 'length', negative: false, bareZero: true } as const;
const place = leaf(onSpan, (written): Reading<Quantity> => {
  if (written !== '0') return parseQuantity(written, 'length', { floor: 'arm' });
  return taken({ ...exact('length', 0), written });
});

/** One kind of motor; `count` of them are on the model. */
export const motor = fields({
  count: count(1).meta({
    title: 'How many',
    description: 'How many motors of this kind the model has',
    example: '2',
  }),
  rotation: word(['clockwise', 'anticlockwise'])
    .meta({
      title: 'Rotation',
      description: 'Sense in which the propeller turns, seen from behind',
      example: 'clockwise',
    })
    .optional(),
  at: oneOrMany(place)
    .meta({
      title: 'Place on the span',
      description: 'Distances from the centre line, on both sides; 0 is the centre line',
      example: '[420 mm]',
    })
    .optional(),
  side: word(['left', 'right'])
    .meta({
      title: 'Side',
      description: 'Which side, seen from behind, where these motors sit on one side only',
      example: 'left',
    })
    .optional(),
  faces: word(['tractor', 'pusher'])
    .meta({
      title: 'Faces',
      description: 'Whether the propeller pulls from ahead or pushes from behind',
      example: 'tractor',
    })
    .optional(),
  hooks: quantity('length', { floor: 'arm' })
    .meta({
      title: 'Hook distance',
      description: 'From the hook to the peg, as the model is built',
      example: '430 mm',
    })
    .optional(),
  skein: skein
    .meta({
      title: 'Skein',
      description:
        'The made-up rubber of one motor: two of strip with strands, length and mass give the third',
      example: '{ strip: { width: 1/8 in, thickness: 1.1 mm }, strands: 10, length: 480 mm, mass: 15.4 g }',
    })
    .optional(),
  'break-turns': oneOrMany(quantity('turns', { floor: 'break-turns' }))
    .meta({
      title: 'Break turns',
      description: 'Turns at which skeins like it broke: one test or a list of them',
      example: '800',
    })
    .optional(),
  propeller: propeller
    .meta({
      title: 'Propeller',
      description: 'The propeller of one motor',
      example: '{ diameter: 320 mm, pitch: 400 mm, blades: 2, after: freewheels }',
    })
    .optional(),
  'thrust-log': log
    .meta({
      title: 'Thrust log',
      description: 'Bench log of the thrust of one motor over time',
      example: '{ file: inner-thrust.csv, turns: 54 x 10 }',
    })
    .optional(),
  'torque-log': log
    .meta({
      title: 'Torque log',
      description: 'Bench log of the torque of one motor while it unwinds',
      example: 'inner-torque.csv',
    })
    .optional(),
});
