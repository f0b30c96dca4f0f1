import { setup } from '../schema/entry.ts';
import { type Beginning, keysAsOptions } from './beginning.ts';
import { entryBeginning } from './entry.ts';

/** What was changed on an aircraft, written into the file of its entry. */
export const setupBeginning: Beginning = {
  called: 'a setup',
  schema: setup,
  options: {
    ...keysAsOptions(setup, []),
    ...Object.fromEntries(
      Object.entries(entryBeginning.options).filter(([, field]) => /^(?:wing|mass)\./.test(field)),
    ),
  },
  questions: [
    { field: 'id' },
    { field: 'from' },
    { field: 'change', optional: true },
    { field: 'mass.airframe', optional: true, unless: ['mass.flying'] },
    { field: 'balance', optional: true },
  ],
  groups: [
    {
      title: 'the wing',
      questions: [
        { field: 'wing.span', optional: true },
        { field: 'wing.area', optional: true },
        { field: 'wing.incidence', optional: true },
      ],
    },
    {
      title: 'the tailplane',
      questions: [
        { field: 'tailplane.area', optional: true },
        { field: 'tailplane.arm', optional: true },
        { field: 'tailplane.incidence', optional: true },
      ],
    },
  ],
  offered: [],
  body: '',
};
