import { fields } from './fields.ts';
import { quantity } from './quantity-field.ts';
import { word, yesNo } from './word-field.ts';

/** How watches make an official time. */
export const timing = fields({
  starts: word(['release', 'off-ground'])
    .meta({
      title: 'Starts',
      description: 'When the watch is started; at the release where nothing is said',
      example: 'release',
    })
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
    .meta({
      title: 'Combine',
      description: 'How several watches make one time; by their mean where nothing is said',
      example: 'mean',
    })
    .optional(),
  resolution: quantity('time')
    .meta({
      title: 'Resolution',
      description: 'The step to which times are rounded; 0.1 s where nothing is said',
      example: '0.1 s',
    })
    .optional(),
  round: word(['down', 'nearest'])
    .meta({
      title: 'Round',
      description: 'Which way times are rounded; down where nothing is said',
      example: 'down',
    })
    .optional(),
  uncertainty: fields({
    watch: quantity('time')
      .meta({
        title: 'Watch',
        description: 'Standard uncertainty of one hand-held watch; 0.10 s where nothing is said',
        example: '0.15 s',
      })
      .optional(),
    video: quantity('time')
      .meta({
        title: 'Video',
        description: 'Standard uncertainty of a time from a video; 0.05 s where nothing is said',
        example: '0.05 s',
      })
      .optional(),
  })
    .meta({
      title: 'Uncertainty',
      description: 'Standard uncertainty of one reading',
      example: '{ watch: 0.15 s, video: 0.05 s }',
    })
    .optional(),
});
