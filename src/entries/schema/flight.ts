import * as z from 'zod';
import { limits } from '../source/limits.ts';
import { moment } from './date-field.ts';
import { fields } from './fields.ts';
import { flightFields } from './flight-fields.ts';
import { oneOrMany } from './one-or-many.ts';
import { balance, count, quantity } from './quantity-field.ts';
import { link, slug, text } from './text-field.ts';
import { word, yesNo } from './word-field.ts';

/** How a flight or a glide went. */
export const behaviour = oneOrMany(
  word(['clean', 'stalled', 'dived', 'spiralled-left', 'spiralled-right', 'rolled', 'gust']),
).meta({
  title: 'Behaviour',
  description: 'How it flew; clean where nothing but the trim shaped the flight',
  example: '[clean]',
});

/** How a model is launched; the rules of a challenge use the same words. */
export const launchWords = ['hand', 'ground', 'water'] as const;

const weather = fields({
  wind: quantity(flightFields.weather.wind)
    .meta({ title: 'Wind', description: 'Speed of the wind', example: '1.5 m/s' })
    .optional(),
  temperature: quantity(flightFields.weather.temperature)
    .meta({ title: 'Temperature', description: 'Of the air', example: '14 °C' })
    .optional(),
  pressure: quantity(flightFields.weather.pressure)
    .meta({
      title: 'Pressure',
      description: 'As read at the field, not reduced to sea level',
      example: '1014 hPa',
    })
    .optional(),
  humidity: quantity(flightFields.weather.humidity)
    .meta({ title: 'Humidity', description: 'Relative humidity of the air', example: '62 %' })
    .optional(),
  elevation: quantity(flightFields.weather.elevation, { negative: true })
    .meta({ title: 'Elevation', description: 'Of the flying place above the sea', example: '4 m' })
    .optional(),
  surface: text()
    .meta({ title: 'Surface', description: 'Of the flying place, such as dry, wet or snow', example: 'dry' })
    .optional(),
});

const rubber = fields({
  'winds-before': count()
    .meta({
      title: 'Winds before',
      description: 'How often this skein had been wound before',
      example: '3',
    })
    .optional(),
  'stretched-to': quantity(flightFields.rubber['stretched-to'])
    .meta({
      title: 'Stretched to',
      description: 'Stretch at the start of winding, as a multiple of the slack length',
      example: '4',
    })
    .optional(),
  temperature: quantity(flightFields.rubber.temperature)
    .meta({ title: 'Temperature', description: 'Of the rubber', example: '18 °C' })
    .optional(),
  wait: quantity(flightFields.rubber.wait)
    .meta({ title: 'Wait', description: 'Between the last turn and the launch', example: '20 s' })
    .optional(),
});

const turnsOfMotors = (title: string, description: string, example: string) =>
  oneOrMany(quantity('turns')).meta({ title, description, example }).optional();

/** One flight as its builder wrote it down. */
export const flight = fields({
  number: count(1).meta({
    title: 'Number',
    description: 'Unique within the entry and never used again',
    example: '1',
  }),
  date: moment().meta({
    title: 'Date',
    description: 'The calendar date at the flying place, with or without the time of day',
    example: '2027-05-09',
  }),
  watches: z
    .array(quantity(flightFields.watches))
    .min(1)
    .max(limits.items)
    .meta({
      title: 'Watches',
      description: 'What each watch showed',
      example: '[41.62 s, 41.80 s]',
    })
    .optional(),
  time: quantity(flightFields.time)
    .meta({ title: 'Time', description: 'What the watch showed, when there was one', example: '41.7 s' })
    .optional(),
  'timed-by': word(['watch', 'video'])
    .meta({ title: 'Timed by', description: 'Hand-held watches or a video', example: 'watch' })
    .optional(),
  turns: turnsOfMotors(
    'Turns',
    'In each motor at launch; one number, or a list with one for each item of motors',
    '54 x 10',
  ),
  'wound-to': turnsOfMotors('Wound to', 'Turns in each motor before backing off', '56 x 10'),
  'turns-left': turnsOfMotors('Turns left', 'Turns still in each motor at landing', '60'),
  'launch-torque': oneOrMany(quantity(flightFields['launch-torque']))
    .meta({
      title: 'Launch torque',
      description: 'Of one motor at launch; one value, or a list with one for each item of motors',
      example: '61 mN·m',
    })
    .optional(),
  launch: word(launchWords)
    .meta({
      title: 'Launch',
      description: 'How it was launched; by hand where nothing is said',
      example: 'hand',
    })
    .optional(),
  'launch-height': quantity(flightFields['launch-height'])
    .meta({
      title: 'Launch height',
      description: 'Of the hand above the ground it stands on',
      example: '1.9 m',
    })
    .optional(),
  drop: quantity(flightFields.drop, { negative: true })
    .meta({
      title: 'Drop',
      description: 'How far the landing lay below the launch ground; negative where it lay above',
      example: '0 m',
    })
    .optional(),
  'motors-run': count()
    .meta({
      title: 'Motors run',
      description: 'How many motors ran, where it was fewer than all',
      example: '2',
    })
    .optional(),
  release: fields({
    how: text().meta({ title: 'How', description: 'What let the propellers go', example: 'pins' }).optional(),
    stagger: quantity(flightFields.release.stagger)
      .meta({
        title: 'Stagger',
        description: 'Time between the first and the last motor let go',
        example: '0.3 s',
      })
      .optional(),
  })
    .meta({
      title: 'Release',
      description: 'How the motors were let go',
      example: '{ how: pins, stagger: 0.3 s }',
    })
    .optional(),
  'motor-run': quantity(flightFields['motor-run'])
    .meta({
      title: 'Motor run',
      description: 'From release until the propellers stop pulling',
      example: '22 s',
    })
    .optional(),
  height: quantity(flightFields.height)
    .meta({ title: 'Height', description: 'The highest seen, above the launch ground', example: '6 m' })
    .optional(),
  behaviour: behaviour.optional(),
  ended: word(['ground', 'obstacle', 'water', 'out-of-sight', 'dethermalised', 'caught'])
    .meta({ title: 'Ended', description: 'What ended the flight', example: 'ground' })
    .optional(),
  changed: text()
    .meta({
      title: 'What was changed',
      description: 'Since the flight before: what readers look for first',
      example: 'Six grams of nose weight, down-thrust from 2° to 3°.',
    })
    .optional(),
  damage: text().meta({ title: 'Damage', description: 'What broke', example: 'none' }).optional(),
  balance: balance()
    .meta({
      title: 'Balance',
      description: "Of this flight, where it differed from the entry's own",
      example: '101 mm',
    })
    .optional(),
  mass: quantity(flightFields.mass, { floor: 'mass' })
    .meta({
      title: 'Flying mass',
      description: "Of this flight, with all rubber, where it differed from the entry's own",
      example: '649 g',
    })
    .optional(),
  setup: slug()
    .meta({
      title: 'Setup',
      description: "A setup's id, or none for the entry as first written; else the one in force on that date",
      example: 'none',
    })
    .optional(),
  round: slug()
    .meta({ title: 'Round', description: 'The round it was flown in, where there are rounds', example: 'r1' })
    .optional(),
  weather: weather
    .meta({
      title: 'Weather',
      description: 'The air it flew in',
      example: '{ wind: 1.5 m/s, temperature: 14 °C, pressure: 1014 hPa, humidity: 62 % }',
    })
    .optional(),
  rubber: rubber
    .meta({
      title: 'Rubber',
      description: 'The state of the rubber on this flight',
      example: '{ winds-before: 3, stretched-to: 4, temperature: 18 °C, wait: 20 s }',
    })
    .optional(),
  timekeepers: oneOrMany(slug())
    .meta({
      title: 'Timekeepers',
      description: 'Handles of those who held the watches',
      example: '[otter, heron]',
    })
    .optional(),
  flyer: slug()
    .meta({ title: 'Flyer', description: 'Handle of who flew it, when not the builder', example: 'bwren' })
    .optional(),
  evidence: oneOrMany(link())
    .meta({
      title: 'Evidence',
      description: 'Links to what shows the flight',
      example: '[https://video.example/abc]',
    })
    .optional(),
  note: text()
    .meta({ title: 'Note', description: 'Anything else', example: 'Landed in the reeds.' })
    .optional(),
  withdrawn: yesNo()
    .meta({
      title: 'Withdrawn',
      description: 'The builder takes the flight back; it stays on the record',
      example: 'true',
    })
    .optional(),
} satisfies Record<keyof typeof flightFields, z.core.$ZodType>);
