import { fields } from './fields.ts';
import { launchWords } from './flight.ts';
import { leaf, type Reading, refused, taken } from './leaf.ts';
import { oneOrMany } from './one-or-many.ts';
import { count, quantity } from './quantity-field.ts';
import { limitText, slug } from './text-field.ts';
import { textPatterns } from './text-patterns.ts';
import { word } from './word-field.ts';

/** `at most 9`, or the number alone: no flights but these are allowed. */
function atMost() {
  return leaf({ kind: 'allowance' }, (written): Reading<number> => {
    const digits = textPatterns.allowance.exec(written)?.[1];
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
  return leaf(
    { kind: 'timekeepers' },
    (written): Reading<{ readonly atLeast: number; readonly orVideo: boolean }> => {
      const match = textPatterns.timekeepers.exec(written);
      return match === null
        ? refused(
            'not-a-number-of-timekeepers',
            `"${written}" does not say how many timekeepers.`,
            written,
            'how many timekeepers a flight needs, such as 2, or 2 or video',
          )
        : taken({ atLeast: Number(match[1]), orVideo: match[2] !== undefined });
    },
  );
}

/** How flights are flown and what they must bring with them. */
export const flying = fields({
  launch: oneOrMany(word(launchWords))
    .meta({ title: 'Launch', description: 'How a model may be launched', example: '[hand, ground]' })
    .optional(),
  'launch-height': limitText()
    .meta({
      title: 'Launch height',
      description: 'A limit on the height of the hand above its ground',
      example: 'at most 2.2 m',
    })
    .optional(),
  drop: limitText()
    .meta({
      title: 'Drop',
      description: 'A limit on how far the landing may lie below the launch ground',
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
      description: 'How many flights on one day; every flight but a void one uses up the allowance',
      example: 'at most 9',
    })
    .optional(),
  flights: atMost()
    .meta({
      title: 'Flights',
      description: 'How many flights in all; every flight but a void one uses up the allowance',
      example: 'at most 60',
    })
    .optional(),
  timekeepers: timekeepers()
    .meta({
      title: 'Timekeepers',
      description: 'How many a flight needs, and whether a video may stand for them',
      example: '2 or video',
    })
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
