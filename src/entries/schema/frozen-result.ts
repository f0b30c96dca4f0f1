import * as z from 'zod';
import { type TextForm, textForms } from './text-form.ts';

// JSON, with numbers as numbers. The forms are for tables of fields, as those of the fields that people write.
function as<Schema extends z.core.$ZodType>(schema: Schema, form: TextForm): Schema {
  textForms.add(schema, { form });
  return schema;
}

const text = () => as(z.string(), { kind: 'text', longest: 5000 });
const slug = () => as(z.string(), { kind: 'slug' });
const day = () => as(z.string(), { kind: 'date', precision: 'day' });
const word = <const Word extends string>(words: readonly Word[]) =>
  as(z.enum(words), { kind: 'word', words });
const whole = (least: number) => as(z.int().min(least), { kind: 'count', least });
const number = () => as(z.number(), { kind: 'number' });
const yesNo = () => as(z.boolean(), { kind: 'yes-no' });

const status = word([
  'withdrawn',
  'void',
  'refused',
  'outside-dates',
  'reported-late',
  'ineligible',
  'attempt',
  'accepted',
  'provisional',
]);

const place = whole(1).meta({
  title: 'Place',
  description: 'Its place; a shared one stands twice',
  example: '1',
});
const entry = slug().meta({ title: 'Entry', description: 'The name of its folder', example: 'reedling' });
const score = number().meta({ title: 'Score', description: 'In seconds, to a thousandth', example: '43.1' });
const flightNumbers = z
  .array(as(z.int(), { kind: 'count', least: 1 }))
  .meta({ title: 'Flights', description: 'Numbers of the flights of the score', example: '[4, 1]' });

const standing = z.strictObject({
  place,
  entry,
  divisions: z.array(slug()).meta({
    title: 'Divisions',
    description: 'The divisions it has a place in',
    example: '[free, grand]',
  }),
  score,
  provisional: yesNo().meta({
    title: 'Provisional',
    description: 'Whether the score rests on a flight without a ruling',
    example: 'false',
  }),
  flights: flightNumbers,
  'tie-break': text().nullable().meta({
    title: 'Tie-break',
    description: 'What parted it from the entry below it of the same score; null where nothing had to',
    example: 'larger span',
  }),
  'within-timing-error-of': z.array(slug()).meta({
    title: 'Within timing error of',
    description: 'Entries whose scores differ by no more than the watches may',
    example: '[bittern]',
  }),
});

const claim = z.strictObject({ entry, score, flights: flightNumbers });

const ruledValue = z.union([
  text(),
  yesNo(),
  number(),
  z.array(text()),
  z.array(as(z.number(), { kind: 'number' })),
]);

const flight = z.strictObject({
  number: as(z.int(), { kind: 'count', least: 1 }).meta({
    title: 'Number',
    description: 'As the entry numbers it',
    example: '4',
  }),
  date: day().meta({ title: 'Date', description: 'The day it was flown', example: '2027-05-09' }),
  flown: as(z.string(), { kind: 'date', precision: 'moment' })
    .meta({
      title: 'Flown',
      description: 'The day with the time of day and its offset, where the builder stated them',
      example: '2027-05-09 18:40+01:00',
    })
    .optional(),
  official: number().meta({ title: 'Official time', description: 'In seconds', example: '43.1' }),
  status: status.meta({
    title: 'Status',
    description: 'What became of the flight when the result was frozen',
    example: 'accepted',
  }),
  reason: text().nullable().meta({
    title: 'Reason',
    description: 'Why it did not count; null where it counted or waited',
    example: 'The landing is not on the video.',
  }),
  span: number()
    .meta({
      title: 'Span',
      description: 'In metres, of an accepted flight of a placed entry',
      example: '3.2',
    })
    .optional(),
});

const entryOfResult = z.strictObject({
  id: slug().meta({ title: 'Id', description: 'The name of its folder', example: 'reedling' }),
  name: text().meta({ title: 'Name', description: 'Of the aircraft', example: 'Reedling' }),
  builders: z.array(slug()).meta({
    title: 'Builders',
    description: 'Handles of who built it',
    example: '[amarsh]',
  }),
  flights: z.array(flight).meta({
    title: 'Flights',
    description: 'Every flight on the record when the result was frozen',
    example: '[{ number: 4, date: 2027-05-09, official: 43.1, status: accepted, reason: null }]',
  }),
  facts: z.record(text(), ruledValue).meta({
    title: 'Facts',
    description: 'The facts and figures the score rests on, in SI units',
    example: '{ setup: none, control: free, span: 3.2 }',
  }),
});

const challenge = z.strictObject({
  id: slug().meta({
    title: 'Id',
    description: "The name of the challenge's file",
    example: 'long-haul-2027',
  }),
  title: text().meta({ title: 'Title', description: 'As it was', example: 'Fenside Long Haul 2027' }),
  opens: day().meta({ title: 'Opens', description: 'The first day of flying', example: '2027-03-01' }),
  closes: day().meta({ title: 'Closes', description: 'The last day of flying', example: '2027-10-31' }),
  state: as(z.literal('final'), { kind: 'word', words: ['final'] })
    .meta({ title: 'State', description: 'What a frozen result is', example: 'final' })
    .optional(),
  target: number()
    .nullable()
    .meta({ title: 'Target', description: 'In seconds; null where the rules had none', example: '40' })
    .optional(),
});

const record = z.strictObject({
  kind: word(['best-time', 'span']).meta({
    title: 'Kind',
    description: 'The longest official time, or the largest span that reached the target',
    example: 'best-time',
  }),
  division: slug().nullable().meta({
    title: 'Division',
    description: 'Of which division; null for the challenge',
    example: 'free',
  }),
  value: number().meta({ title: 'Value', description: 'In seconds, or in metres', example: '43.1' }),
  entry,
  flight: as(z.int(), { kind: 'count', least: 1 }).meta({
    title: 'Flight',
    description: 'Number of the flight',
    example: '4',
  }),
  date: day().meta({ title: 'Date', description: 'The day it was flown', example: '2027-05-09' }),
});

/** `results/<challenge>.json`: JSON, written by a command, with numbers as numbers. */
export const frozenResult = z.strictObject({
  format: as(z.literal(1), { kind: 'format-number' }).meta({
    title: 'Format',
    description: 'The version of the content format',
    example: '1',
  }),
  generator: text().meta({
    title: 'Generator',
    description: 'The version of the program that froze it',
    example: '0.1.0',
  }),
  closed: day().meta({ title: 'Closed', description: 'The day it was frozen', example: '2027-12-02' }),
  challenge: challenge.meta({
    title: 'Challenge',
    description: 'The challenge as it was',
    example: '{ id: long-haul-2027, title: Fenside Long Haul 2027, opens: 2027-03-01, closes: 2027-10-31 }',
  }),
  standings: z.array(standing).meta({
    title: 'Standings',
    description: 'Places and scores, the first place first',
    example:
      '[{ place: 1, entry: reedling, divisions: [free], score: 43.1, provisional: false, flights: [4], tie-break: null, within-timing-error-of: [] }]',
  }),
  divisions: z
    .record(as(z.string(), { kind: 'slug' }), z.array(z.strictObject({ place, entry, score })))
    .meta({
      title: 'Divisions',
      description: 'Places in each division, under its id',
      example: '{ free: [{ place: 1, entry: reedling, score: 43.1 }] }',
    }),
  claims: z.array(claim).meta({
    title: 'Claims',
    description: 'What entries would have scored, had every flight been accepted that waited for a ruling',
    example: '[{ entry: bittern, score: 41.2, flights: [2] }]',
  }),
  unplaced: z
    .array(
      z.strictObject({
        entry,
        reason: text().meta({
          title: 'Reason',
          description: 'Why it has no place',
          example: 'withdrawn',
        }),
      }),
    )
    .meta({
      title: 'Unplaced',
      description: 'Entries without a place',
      example: '[{ entry: curlew, reason: withdrawn }]',
    }),
  records: z.array(record).meta({
    title: 'Records',
    description: 'The records of the challenge when it was closed',
    example:
      '[{ kind: best-time, division: null, value: 43.1, entry: reedling, flight: 4, date: 2027-05-09 }]',
  }),
  entries: z.array(entryOfResult).meta({
    title: 'Entries',
    description: 'Every entry with its flights, so that it is told even when its folder is gone',
    example: '[{ id: reedling, name: Reedling, builders: [amarsh], flights: [], facts: { span: 3.2 } }]',
  }),
});
