import { flight } from '../schema/flight.ts';
import { type Beginning, keysAsOptions } from './beginning.ts';

/** A flight, written into the file of its entry. Its number is given to it. */
export const flightBeginning: Beginning = {
  called: 'a flight',
  schema: flight,
  options: {
    ...keysAsOptions(flight, ['number', 'withdrawn']),
    stagger: 'release.stagger',
    wind: 'weather.wind',
    temperature: 'weather.temperature',
  },
  questions: [
    { field: 'date' },
    { field: 'watches', unless: ['time'], hint: 'One or several, with commas between them.' },
    { field: 'turns', optional: true },
    { field: 'launch', optional: true },
    { field: 'evidence', optional: true },
    { field: 'timekeepers', optional: true },
    { field: 'changed', optional: true },
  ],
  groups: [
    {
      title: 'how it flew',
      questions: [
        { field: 'motor-run', optional: true },
        { field: 'height', optional: true },
        { field: 'behaviour', optional: true },
        { field: 'ended', optional: true },
        { field: 'damage', optional: true },
        { field: 'note', optional: true },
      ],
    },
    {
      title: 'the weather',
      questions: [
        { field: 'weather.wind', optional: true },
        { field: 'weather.temperature', optional: true },
        { field: 'weather.pressure', optional: true },
        { field: 'weather.surface', optional: true },
      ],
    },
  ],
  offered: [],
  body: '',
};
