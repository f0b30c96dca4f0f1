import * as z from 'zod';
import { limits } from '../source/limits.ts';
import { date, monthOrDate } from './date-field.ts';
import { formerly } from './entry.ts';
import { fields } from './fields.ts';
import { strip } from './motor.ts';
import { count, quantity } from './quantity-field.ts';
import { fileName, slug, text } from './text-field.ts';
import { yesNo } from './word-field.ts';

const file = fileName().meta({
  title: 'File',
  description: 'Log file beside the batch',
  example: 'fen-a.csv',
});

const cycle = count(1)
  .meta({ title: 'Cycle', description: 'Which stretch or winding of this piece it was', example: '2' })
  .optional();

const stretchTest = fields({
  file,
  length: quantity('length', { floor: 'skein-length' }).meta({
    title: 'Length',
    description: 'Unstretched length between the marks, of one strand',
    example: '100 mm',
  }),
  mass: quantity('mass', { floor: 'mass' }).meta({
    title: 'Mass',
    description: 'Of the rubber between the marks',
    example: '0.33 g',
  }),
  temperature: quantity('temperature')
    .meta({ title: 'Temperature', description: 'Of the rubber', example: '18 °C' })
    .optional(),
  cycle,
  broke: yesNo()
    .meta({ title: 'Broke', description: 'Whether the piece was stretched until it broke', example: 'false' })
    .optional(),
  by: slug().meta({ title: 'By', description: 'Handle of who tested', example: 'amarsh' }).optional(),
  date: date().meta({ title: 'Date', description: 'The day of the test', example: '2027-02-03' }).optional(),
});

const torqueTest = fields({
  file,
  strands: count(1)
    .meta({ title: 'Strands', description: 'Of the skein that was tested', example: '6' })
    .optional(),
  length: quantity('length', { floor: 'skein-length' }).meta({
    title: 'Length',
    description: 'Made-up length of the skein, slack',
    example: '300 mm',
  }),
  mass: quantity('mass', { floor: 'mass' }).meta({
    title: 'Mass',
    description: 'Of the skein',
    example: '5.9 g',
  }),
  cycle,
});

/** A batch of rubber strip and its tests. */
export const batch = fields({
  label: text().meta({ title: 'Label', description: 'As it should be shown', example: 'Fen A, first cut' }),
  strip: strip
    .meta({
      title: 'Strip',
      description: 'Width and thickness of the strip, slack',
      example: '{ width: 3.2 mm, thickness: 1.1 mm }',
    })
    .optional(),
  density: quantity('density')
    .meta({ title: 'Density', description: 'Of the rubber', example: '0.93 g/cm3' })
    .optional(),
  made: monthOrDate()
    .meta({ title: 'Made', description: 'The month or day it was made', example: '2026-02' })
    .optional(),
  'stretch-tests': z
    .array(stretchTest)
    .max(limits.items)
    .meta({
      title: 'Stretch tests',
      description: 'Stretching and letting back of single strands',
      example: '[{ file: fen-a.csv, length: 100 mm, mass: 0.33 g }]',
    })
    .optional(),
  'torque-tests': z
    .array(torqueTest)
    .max(limits.items)
    .meta({
      title: 'Torque tests',
      description: 'Torque of a wound skein while it unwinds',
      example: '[{ file: fen-a-torque.csv, strands: 6, length: 300 mm, mass: 5.9 g }]',
    })
    .optional(),
  formerly,
});
