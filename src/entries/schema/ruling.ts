import * as z from 'zod';
import { limits } from '../source/limits.ts';
import { date } from './date-field.ts';
import { fields } from './fields.ts';
import { leaf, type Reading, refused, taken } from './leaf.ts';
import { oneOrMany } from './one-or-many.ts';
import { balance, count, quantity } from './quantity-field.ts';
import { link, slug, text } from './text-field.ts';
import { textPatterns } from './text-patterns.ts';
import { word } from './word-field.ts';

const verdict = word(['accepted', 'refused', 'void']).meta({
  title: 'Verdict',
  description:
    'What was decided; void is a flight that was struck in the air or spoilt by a helper, and costs no allowance',
  example: 'accepted',
});

const by = slug().meta({ title: 'By', description: 'Handle of who decided', example: 'otter' });

const seal = leaf(
  { kind: 'seal' },
  (written): Reading<string> =>
    textPatterns.seal.test(written)
      ? taken(written)
      : refused(
          'not-a-seal',
          `"${written}" is not a seal.`,
          written,
          '1- and 16 hexadecimal digits, as the command writes it, such as 1-0345b3da7446da48',
        ),
).meta({
  title: 'Seal',
  description: 'What the flight looked like when it was ruled; written by the command',
  example: '1-0345b3da7446da48',
});

const inspection = fields({
  date: date().meta({ title: 'Date', description: 'The day of the inspection', example: '2027-06-01' }),
  by: slug().meta({ title: 'By', description: 'Handle of who measured', example: 'scales-team' }),
  span: quantity('length', { floor: 'span' })
    .meta({ title: 'Span', description: 'Projected, tip to tip', example: '3.19 m' })
    .optional(),
  'wing-area': quantity('area', { floor: 'area' })
    .meta({ title: 'Wing area', description: 'Projected', example: '87 dm2' })
    .optional(),
  airframe: quantity('mass', { floor: 'mass' })
    .meta({ title: 'Airframe mass', description: 'Ready to fly, without rubber', example: '611 g' })
    .optional(),
  rubber: quantity('mass', { floor: 'mass' })
    .meta({ title: 'Rubber mass', description: 'All rubber of the model', example: '30.6 g' })
    .optional(),
  balance: balance()
    .meta({ title: 'Balance', description: 'Behind the leading edge at the centre line', example: '103 mm' })
    .optional(),
});

const reason = text().meta({
  title: 'Reason',
  description: 'Why, in a sentence fit for a public page',
  example: 'The landing is not on the video.',
});

/** The ruling of one flight. */
const flightRuling = fields({
  flight: count(1).meta({ title: 'Flight', description: 'Its number', example: '1' }),
  verdict,
  by,
  date: date().meta({ title: 'Date', description: 'The day of the decision', example: '2027-05-12' }),
  second: slug()
    .meta({ title: 'Second', description: 'Handle of who confirmed it', example: 'heron' })
    .optional(),
  received: date()
    .meta({ title: 'Received', description: 'When the flight was handed in', example: '2027-05-10' })
    .optional(),
  reason: reason.optional(),
  time: quantity('time')
    .meta({ title: 'Time', description: 'A ruled time, taken as it is', example: '43.1 s' })
    .optional(),
  seen: oneOrMany(slug())
    .meta({
      title: 'Seen',
      description: 'What the evidence showed',
      example: '[launch, whole-flight, landing]',
    })
    .optional(),
  kept: link()
    .meta({
      title: 'Kept',
      description: 'Where the evidence is kept, where a link of the flight has died',
      example: 'https://video.example/kept/abc',
    })
    .optional(),
  seal: seal.optional(),
  'as-ruled': z
    .record(text(), z.union([text(), z.array(text())]))
    .meta({
      title: 'As ruled',
      description: 'The facts and figures the ruling rests on; written by the command',
      example: '{ setup: none, control: free, span: 3.2 m }',
    })
    .optional(),
  earlier: z
    .array(
      fields({
        verdict,
        by: by.optional(),
        date: date()
          .meta({ title: 'Date', description: 'The day of the decision', example: '2027-05-20' })
          .optional(),
        reason: reason.optional(),
      }),
    )
    .meta({
      title: 'Earlier',
      description: 'Earlier verdicts on the same flight',
      example: '[{ verdict: refused, reason: The landing is not on the video. }]',
    })
    .optional(),
});

/** The organiser's decisions about one entry. */
export const ruling = fields({
  inspected: oneOrMany(inspection)
    .meta({
      title: 'Inspected',
      description: 'What officials measured: one inspection or a list',
      example: '{ date: 2027-06-01, by: scales-team, span: 3.19 m }',
    })
    .optional(),
  flights: z
    .array(flightRuling)
    .max(limits.flights)
    .meta({
      title: 'Flights',
      description: 'The rulings, flight by flight',
      example: '[{ flight: 1, verdict: accepted, by: otter, date: 2027-05-12 }]',
    })
    .optional(),
  disqualified: fields({
    reason,
    by,
    date: date().meta({ title: 'Date', description: 'The day of the decision', example: '2027-06-20' }),
  })
    .meta({
      title: 'Disqualified',
      description: 'The entry has no place; its flights and figures stay',
      example: '{ reason: A stabiliser was carried., by: otter, date: 2027-06-20 }',
    })
    .optional(),
});

export type RulingFields = z.output<typeof ruling>;
