import { batch } from '../schema/batch.ts';
import { type Beginning, keysAsOptions } from './beginning.ts';

/** A batch of rubber strip, with the first test of it where there is one. */
export const batchBeginning: Beginning = {
  called: 'a batch of rubber',
  schema: batch,
  options: {
    ...keysAsOptions(batch, ['stretch-tests', 'torque-tests', 'formerly']),
    width: 'strip.width',
    thickness: 'strip.thickness',
    length: 'stretch-tests.length',
    mass: 'stretch-tests.mass',
  },
  questions: [
    { field: 'label' },
    { field: 'strip.width', optional: true },
    { field: 'strip.thickness', when: 'strip.width' },
    { field: 'density', optional: true },
    { field: 'made', optional: true },
  ],
  groups: [],
  offered: ['strip', 'density', 'made', 'stretch-tests', 'torque-tests'],
  body: `<!-- Here stands what is known of the batch, in Markdown: how it was stored, cut and tested, and how it compares with others. These
lines are not shown; write yours in their place. -->
`,
};
