import * as z from 'zod';
import { date } from './date-field.ts';
import { factWords } from './design.ts';
import { formerly } from './entry.ts';
import { fields } from './fields.ts';
import { launchWords } from './flight.ts';
import { leaf, type Reading, refused, taken } from './leaf.ts';
import { oneOrMany } from './one-or-many.ts';
import { count, plainNumber, quantity } from './quantity-field.ts';
import { slug, text } from './text-field.ts';
import { timeZone } from './time-zone.ts';
import { word, yesNo } from './word-field.ts';

/** `at most 9`, or the number alone: no flights but these are allowed. */
function atMost() {
  return leaf((written): Reading<number> => {
    const digits = /^(?:at most\s+)?(\d{1,6})$/.exec(written.trim())?.[1];
    return digits === undefined || Number(digits) < 1
      ? refused(
          'not-an-allowance',
          `"${written}" is no number of flights.`,
          written,
          'the most that are allowed, such as at most 9',
        )
      : taken(Number(digits));
  });
}

/** `2`, or `2 or video`: a video stands for the timekeepers. */
function timekeepers() {
  return leaf((written): Reading<{ readonly atLeast: number; readonly orVideo: boolean }> => {
    const match = /^(\d{1,3})(\s+or\s+video)?$/.exec(written.trim());
    return match === null
      ? refused(
          'not-a-number-of-timekeepers',
          `"${written}" does not say how many timekeepers.`,
          written,
          'how many timekeepers a flight needs, such as 2, or 2 or video',
        )
      : taken({ atLeast: Number(match[1]), orVideo: match[2] !== undefined });
  });
}

const factShape = {
  control: oneOrMany(word(factWords.control))
    .meta({ title: 'Control', description: 'Which kinds of control are meant', example: '[free, guided]' })
    .optional(),
  onboard: oneOrMany(word(factWords.onboard))
    .meta({
      title: 'On board',
      description: 'Which devices may be on board; no other may',
      example: '[release, dethermaliser, locator]',
    })
    .optional(),
  layout: oneOrMany(word(factWords.layout))
    .meta({ title: 'Layout', description: 'Which layouts are meant', example: 'tail-aft' })
    .optional(),
  origin: oneOrMany(word(factWords.origin))
    .meta({ title: 'Origin', description: 'Whose design it may be', example: '[own, plan]' })
    .optional(),
  junior: yesNo()
    .meta({ title: 'Junior', description: 'Whether every builder is a junior', example: 'true' })
    .optional(),
};

/** Any other key is a figure of the model with a limit in words. */
const limitSentence = text().meta({
  title: 'Limit',
  description: 'A limit on a figure of the model, in words',
  example: 'at least 2.4 m',
});

const eligibility = z.object(factShape).catchall(limitSentence);

const division = z
  .object({
    id: slug().meta({ title: 'Id', description: 'A short name for addresses', example: 'free' }),
    name: text().meta({ title: 'Name', description: 'As it should be shown', example: 'Free flight' }),
    ...factShape,
  })
  .catchall(limitSentence);

/** The keys of eligibility and divisions that are no figures. */
export const factKeys = Object.keys(factShape) as (keyof typeof factShape)[];

const flying = fields({
  launch: oneOrMany(word(launchWords))
    .meta({ title: 'Launch', description: 'How a model may be launched', example: '[hand, ground]' })
    .optional(),
  'launch-height': text()
    .meta({ title: 'Launch height', description: 'A limit in words', example: 'at most 2.2 m' })
    .optional(),
  drop: text()
    .meta({
      title: 'Drop',
      description: 'How far the landing may lie below the launch ground, in words',
      example: 'at most 5 m',
    })
    .optional(),
  release: word(['together', 'staged'])
    .meta({
      title: 'Release',
      description: 'Whether the motors must be let go together (within 0.5 s) or may be staged',
      example: 'together',
    })
    .optional(),
  'attempt-below': quantity('time')
    .meta({
      title: 'Attempt below',
      description: 'A shorter flight is an attempt: on record, never counted',
      example: '4 s',
    })
    .optional(),
  maximum: quantity('time')
    .meta({ title: 'Maximum', description: 'A longer flight scores this much', example: '180 s' })
    .optional(),
  'flights-per-day': atMost()
    .meta({
      title: 'Flights per day',
      description: 'How many flights a day every flight but a void one uses up',
      example: 'at most 9',
    })
    .optional(),
  flights: atMost()
    .meta({ title: 'Flights', description: 'How many flights in all', example: 'at most 60' })
    .optional(),
  timekeepers: timekeepers()
    .meta({ title: 'Timekeepers', description: 'How many a flight needs', example: '2 or video' })
    .optional(),
  evidence: fields({
    links: count()
      .meta({ title: 'Links', description: 'How many links a flight needs', example: '1' })
      .optional(),
    shows: oneOrMany(slug())
      .meta({
        title: 'Shows',
        description: "The organiser's checklist of what the evidence shows",
        example: '[launch, whole-flight, landing, weighing, span]',
      })
      .optional(),
  })
    .meta({
      title: 'Evidence',
      description: 'What must show the flight',
      example: '{ links: 1, shows: [launch, whole-flight, landing] }',
    })
    .optional(),
});

const timing = fields({
  starts: word(['release', 'off-ground'])
    .meta({ title: 'Starts', description: 'When the watch is started', example: 'release' })
    .optional(),
  stops: fields({
    touchdown: yesNo()
      .meta({ title: 'Touchdown', description: 'Whether touching the ground ends the time', example: 'true' })
      .optional(),
    'out-of-sight': quantity('time')
      .meta({
        title: 'Out of sight',
        description: 'Hidden longer than this: the time ends when it was last seen',
        example: '10 s',
      })
      .optional(),
  })
    .meta({
      title: 'Stops',
      description: 'When the watch is stopped',
      example: '{ touchdown: true, out-of-sight: 10 s }',
    })
    .optional(),
  combine: word(['mean', 'median', 'lowest'])
    .meta({ title: 'Combine', description: 'How several watches make one time', example: 'mean' })
    .optional(),
  resolution: quantity('time')
    .meta({ title: 'Resolution', description: 'The step to which times are rounded', example: '0.1 s' })
    .optional(),
  round: word(['down', 'nearest'])
    .meta({ title: 'Round', description: 'Which way times are rounded', example: 'down' })
    .optional(),
  uncertainty: fields({
    watch: quantity('time')
      .meta({ title: 'Watch', description: 'Standard uncertainty of one hand-held watch', example: '0.15 s' })
      .optional(),
    video: quantity('time')
      .meta({ title: 'Video', description: 'Standard uncertainty of a time from a video', example: '0.05 s' })
      .optional(),
  })
    .meta({
      title: 'Uncertainty',
      description: 'Standard uncertainty of one reading',
      example: '{ watch: 0.15 s, video: 0.05 s }',
    })
    .optional(),
});

const scoring = fields({
  method: word(['best', 'sum', 'mean', 'rounds'])
    .meta({ title: 'Method', description: 'How flights make a score', example: 'best' })
    .optional(),
  flights: count(1)
    .meta({ title: 'Flights', description: 'How many best flights sum and mean take', example: '3' })
    .optional(),
  scale: fields({
    by: text().meta({ title: 'By', description: 'A figure of the model', example: 'span' }),
    reference: text().meta({
      title: 'Reference',
      description: 'The value at which the score stays as it is',
      example: '2.4 m',
    }),
    power: plainNumber().meta({
      title: 'Power',
      description: 'A positive power favours large models',
      example: '0.5',
    }),
  })
    .meta({
      title: 'Scale',
      description: 'Handicap: score × (figure of the model / reference) to the power',
      example: '{ by: span, reference: 2.4 m, power: 0.5 }',
    })
    .optional(),
  provisional: word(['apart', 'ranked'])
    .meta({
      title: 'Provisional',
      description: 'Whether provisional flights are listed apart, with their claims, or ranked',
      example: 'apart',
    })
    .optional(),
});

const round = fields({
  id: slug().meta({ title: 'Id', description: 'The name by which flights name it', example: 'r1' }),
  maximum: quantity('time').meta({
    title: 'Maximum',
    description: 'A longer flight scores this much in the round',
    example: '180 s',
  }),
  from: date().meta({ title: 'From', description: 'Its first day', example: '2027-06-01' }).optional(),
  to: date().meta({ title: 'To', description: 'Its last day', example: '2027-06-02' }).optional(),
  'fly-off': yesNo()
    .meta({
      title: 'Fly-off',
      description: 'Only for entries that flew every maximum before',
      example: 'true',
    })
    .optional(),
});

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
      description: 'Limits on figures of the model, in words, and on what is declared of it',
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
  'tie-break': oneOrMany(text())
    .meta({
      title: 'Tie-break',
      description: 'What decides between equal scores, step by step',
      example: '[next-best-flight, larger span, earlier flight]',
    })
    .optional(),
  divisions: z
    .array(division)
    .meta({
      title: 'Divisions',
      description: 'Boards of their own, by declared facts or figures of the model',
      example: '[{ id: free, name: Free flight, control: free }]',
    })
    .optional(),
  rounds: z
    .array(round)
    .meta({
      title: 'Rounds',
      description: 'Only for the method rounds',
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
        date: date().meta({ title: 'Date', description: 'From when it holds', example: '2027-04-11' }),
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
