import * as z from 'zod';
import { limits } from '../source/limits.ts';
import { division, eligibility } from './conditions.ts';
import { date } from './date-field.ts';
import { formerly } from './entry.ts';
import { fields } from './fields.ts';
import { flying } from './flying-rules.ts';
import { oneOrMany } from './one-or-many.ts';
import { quantity } from './quantity-field.ts';
import { round, scoring } from './scoring-rules.ts';
import { text, tieBreakStep } from './text-field.ts';
import { timeZone } from './time-zone.ts';
import { timing } from './timing-rules.ts';

/** One challenge: the rules as data. */
export const challenge = fields({
  title: text().meta({
    title: 'Title',
    description: 'As it should be shown',
    example: 'Fenside Long Haul 2027',
  }),
  opens: date().meta({ title: 'Opens', description: 'The first day of flying', example: '2027-03-01' }),
  closes: date().meta({ title: 'Closes', description: 'The last day of flying', example: '2027-10-31' }),
  'report-by': date()
    .meta({
      title: 'Report by',
      description: 'The day by which a flight must have been handed in',
      example: '2027-11-14',
    })
    .optional(),
  final: date()
    .meta({
      title: 'Final',
      description: 'From this day on protests are over and the result may be frozen',
      example: '2027-12-01',
    })
    .optional(),
  'time-zone': timeZone()
    .meta({
      title: 'Time zone',
      description: 'Only for saying when something closes',
      example: 'Europe/London',
    })
    .optional(),
  target: fields({
    time: quantity('time').meta({ title: 'Time', description: 'The time to reach', example: '40 s' }),
    label: text().meta({ title: 'Label', description: 'What to call it', example: 'Long haul' }).optional(),
  })
    .meta({
      title: 'Target',
      description: 'What an official time must reach to be on the honour roll',
      example: '{ time: 40 s, label: Long haul }',
    })
    .optional(),
  milestones: z
    .array(
      fields({
        time: quantity('time').meta({ title: 'Time', description: 'The time to reach', example: '10 s' }),
        label: text().meta({
          title: 'Label',
          description: 'What to call it',
          example: 'A good throw and a bit',
        }),
      }),
    )
    .meta({
      title: 'Milestones',
      description: 'Times on the way to the target',
      example: '[{ time: 10 s, label: A good throw and a bit }]',
    })
    .optional(),
  eligibility: eligibility
    .meta({
      title: 'Eligibility',
      description: 'What an aircraft must be: limits on its figures, in words, and on what is declared of it',
      example: '{ span: at least 2.4 m, control: [free, guided] }',
    })
    .optional(),
  flying: flying
    .meta({
      title: 'Flying',
      description: 'How flights are flown and what they must bring with them',
      example: '{ launch: hand, attempt-below: 4 s }',
    })
    .optional(),
  timing: timing
    .meta({
      title: 'Timing',
      description: 'How watches make an official time',
      example: '{ combine: mean, resolution: 0.1 s, round: down }',
    })
    .optional(),
  scoring: scoring
    .meta({ title: 'Scoring', description: 'How official times make a score', example: '{ method: best }' })
    .optional(),
  'tie-break': oneOrMany(tieBreakStep())
    .meta({
      title: 'Tie-break',
      description: 'What decides between equal scores, step by step; without it, places are shared',
      example: '[next-best-flight, larger span, earlier flight]',
    })
    .optional(),
  divisions: z
    .array(division)
    .max(limits.items)
    .meta({
      title: 'Divisions',
      description: 'Boards of their own, by declared facts or figures of the model',
      example: '[{ id: free, name: Free flight, control: free }]',
    })
    .optional(),
  rounds: z
    .array(round)
    .max(limits.items)
    .meta({
      title: 'Rounds',
      description: 'The rounds, where the method is rounds',
      example: '[{ id: r1, maximum: 180 s }]',
    })
    .optional(),
  protests: quantity('time')
    .meta({
      title: 'Protests',
      description: 'How long a result may be protested',
      example: '14 days',
    })
    .optional(),
  amendments: z
    .array(
      fields({
        date: date().meta({ title: 'Date', description: 'The day it was made known', example: '2027-04-11' }),
        what: text().meta({
          title: 'What',
          description: 'What was changed',
          example: 'Video timing allowed',
        }),
        why: text()
          .meta({ title: 'Why', description: 'The reason', example: 'Lone builders could not enter' })
          .optional(),
      }),
    )
    .meta({
      title: 'Amendments',
      description: 'Required for any change of the rules after opening',
      example: '[{ date: 2027-04-11, what: Video timing allowed, why: Lone builders could not enter }]',
    })
    .optional(),
  formerly,
});
