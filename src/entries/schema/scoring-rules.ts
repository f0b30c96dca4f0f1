import { date } from './date-field.ts';
import { fields } from './fields.ts';
import { count, plainNumber, quantity } from './quantity-field.ts';
import { figureId, slug, text } from './text-field.ts';
import { word, yesNo } from './word-field.ts';

/** How official times make a score. */
export const scoring = fields({
  method: word(['best', 'sum', 'mean', 'rounds'])
    .meta({
      title: 'Method',
      description:
        'The best flight, the sum or the mean of the best ones, or one of each round; best where nothing is said',
      example: 'best',
    })
    .optional(),
  flights: count(1)
    .meta({
      title: 'Flights',
      description: 'How many of the best flights sum and mean take; 3 where nothing is said',
      example: '3',
    })
    .optional(),
  scale: fields({
    by: figureId().meta({
      title: 'By',
      description: 'The figure by which scores are scaled',
      example: 'span',
    }),
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
      description:
        'Whether flights without a ruling are listed apart, with what they would score, or ranked; apart where nothing is said',
      example: 'apart',
    })
    .optional(),
});

/** One round, where the method is rounds. */
export const round = fields({
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
      description: 'Whether it is only for entries that flew every maximum before',
      example: 'true',
    })
    .optional(),
});
