import * as z from 'zod';
import { limits } from '../source/limits.ts';
import { date } from './date-field.ts';
import { designChangesShape, designShape } from './design.ts';
import { fields } from './fields.ts';
import { behaviour, flight } from './flight.ts';
import { oneOrMany } from './one-or-many.ts';
import { balance, quantity } from './quantity-field.ts';
import { entryAddress, shortText, slug, text } from './text-field.ts';
import { word, yesNo } from './word-field.ts';

/** Earlier names under which a page was to be found. */
export const formerly = oneOrMany(slug())
  .meta({
    title: 'Formerly',
    description: 'Names this had before: their addresses lead here',
    example: '[old-name]',
  })
  .optional();

const builder = z.union([
  slug(),
  fields({
    handle: slug().meta({
      title: 'Handle',
      description: 'A short name for addresses, the same in every entry of the same person',
      example: 'amarsh',
    }),
    name: shortText()
      .meta({ title: 'Name', description: 'As it should be shown', example: 'A. Marsh' })
      .optional(),
    club: shortText()
      .meta({ title: 'Club', description: 'The club you fly with', example: 'Fenside Flyers' })
      .optional(),
    junior: yesNo()
      .meta({ title: 'Junior', description: 'Juniors are shown by their handle only', example: 'true' })
      .optional(),
  }),
]);

/** What was changed later: overrides of the design, from a date on. */
export const setup = fields({
  id: slug().meta({ title: 'Id', description: 'A short name for the setup', example: 'b' }),
  from: date().meta({ title: 'From', description: 'The day from which it holds', example: '2027-06-10' }),
  change: text()
    .meta({
      title: 'Change',
      description: 'What was changed, in words',
      example: '"new, sealed tailplane, 12 g lighter"',
    })
    .optional(),
  ...designChangesShape,
});

const glide = fields({
  date: date()
    .meta({ title: 'Date', description: 'The calendar date of the throw', example: '2027-04-02' })
    .optional(),
  height: quantity('length')
    .meta({ title: 'Height', description: 'Of the hand above the ground', example: '3.0 m' })
    .optional(),
  distance: quantity('length')
    .meta({ title: 'Distance', description: 'From the hand to the landing', example: '36 m' })
    .optional(),
  time: quantity('time')
    .meta({ title: 'Time', description: 'From the throw to the landing', example: '9.5 s' })
    .optional(),
  wind: quantity('speed')
    .meta({ title: 'Wind', description: 'Speed of the wind', example: '0.5 m/s' })
    .optional(),
  direction: word(['into', 'with', 'across'])
    .meta({
      title: 'Direction',
      description: 'Of the throw: into the wind, with it or across',
      example: 'into',
    })
    .optional(),
  balance: balance()
    .meta({
      title: 'Balance',
      description: "On this throw, where it differed from the entry's own",
      example: '98 mm',
    })
    .optional(),
  behaviour: behaviour.optional(),
  note: text().meta({ title: 'Note', description: 'Anything else', example: 'A little lift.' }).optional(),
});

/** An aircraft in a challenge, with its setups and flights. */
export const entry = fields({
  name: shortText().meta({ title: 'Name', description: 'Of the aircraft', example: 'Reedling' }),
  builder: oneOrMany(builder, 1).meta({
    title: 'Builder',
    description: 'Who built it: a handle, alone or with name and club; a list for a team',
    example: '{ handle: amarsh, name: A. Marsh, club: Fenside Flyers }',
  }),
  entered: date()
    .meta({ title: 'Entered', description: 'The day it was entered', example: '2027-03-28' })
    .optional(),
  ...designShape,
  setups: z
    .array(setup)
    .max(limits.items)
    .meta({
      title: 'Setups',
      description: 'What was changed later: each overrides what it names, from a date on',
      example: '[{ id: b, from: 2027-06-10, change: new tailplane, mass: { airframe: 600 g } }]',
    })
    .optional(),
  glides: z
    .array(glide)
    .max(limits.glides)
    .meta({
      title: 'Glides',
      description: 'Unpowered test throws',
      example: '[{ date: 2027-04-02, height: 3.0 m, distance: 36 m, time: 9.5 s, behaviour: [clean] }]',
    })
    .optional(),
  flights: z
    .array(flight)
    .max(limits.flights)
    .meta({
      title: 'Flights',
      description: 'Every flight that is to stand on the record',
      example: '[{ number: 1, date: 2027-05-09, time: 41.7 s }]',
    })
    .optional(),
  withdrawn: fields({
    date: date()
      .meta({ title: 'Date', description: 'The day it was withdrawn', example: '2027-08-01' })
      .optional(),
    reason: text().meta({ title: 'Reason', description: 'Why, in a word', example: 'sold' }).optional(),
  })
    .meta({
      title: 'Withdrawn',
      description: 'Takes the whole entry back: it stays on the record, unplaced',
      example: '{ date: 2027-08-01, reason: sold }',
    })
    .optional(),
  also: oneOrMany(entryAddress())
    .meta({
      title: 'Also',
      description: 'The same aircraft in another challenge',
      example: 'fenside-2026/reedling',
    })
    .optional(),
  formerly,
});

/** What a setup may not change, each with the reason. */
export const notForSetups: ReadonlyMap<string, string> = new Map([
  ['name', 'an aircraft keeps its name; give a differently named one an entry of its own'],
  ['builder', 'an aircraft keeps its builder'],
  ['entered', 'it was entered once'],
  ['flights', 'flights stand in the list of the entry; a flight names its setup there'],
  ['glides', 'glides stand in the list of the entry and count for the setup in force on their date'],
  ['also', 'it holds for the whole entry'],
  ['setups', 'setups stand in one list, each laid over the one before it'],
  ['withdrawn', 'it holds for the whole entry'],
  ['formerly', 'it holds for the whole entry'],
]);
