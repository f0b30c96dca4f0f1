import { didYouMean } from '../problems/did-you-mean.ts';
import { fieldName } from '../problems/field-name.ts';
import { problemAt } from '../problems/make-problem.ts';
import type { Problem } from '../problems/problem.ts';
import { flightFields } from '../schema/flight-fields.ts';
import type { SourceNode } from '../source/source.ts';
import type { EntryCheck } from './entry-check.ts';
import { relatedAt } from './first-of.ts';

const flightKeys = Object.keys(flightFields);

/** A flight has either a time or its watches. Read from the source, so that a time with a mistake is still a time. */
export const checkFlightTimes: EntryCheck = (_draft, source) => {
  const list = source.root.pairs.find(({ key }) => key.text === 'flights')?.value;
  if (list?.kind !== 'list') return [];
  return list.items.flatMap((flight, index): Problem[] => {
    if (flight.kind !== 'map') return [];
    const path = ['flights', index];
    const [time, watches] = [has(flight, 'time'), has(flight, 'watches')];
    if (time && watches)
      return [
        problemAt(source, [...path, 'time'], 'key', 'time-and-watches', {
          message: `${fieldName(source, [...path, 'time'])} stands beside \`watches\`, and only one of them can hold. Keep \`watches\` where several were read, \`time\` where there was one.`,
          found: 'time and watches',
          accepted: '`time` or `watches`',
          related: relatedAt(source, [...path, 'watches'], 'the watches stand here'),
        }),
      ];
    if (time || watches) return [];
    // A key that is nearly one of them is told to be misspelt, and that is all that is wrong.
    const meant = flight.pairs.map(({ key }) => didYouMean(key.text, flightKeys));
    if (meant.includes('time') || meant.includes('watches')) return [];
    return [
      problemAt(source, path, 'key', 'time-missing', {
        message: `${fieldName(source, path)} has no time. Write \`time: 41.7 s\`, or \`watches: [41.62 s, 41.80 s]\` where several were read.`,
        accepted: '`time` or `watches`',
        suggestion: 'time: 41.7 s',
      }),
    ];
  });
};

function has(flight: SourceNode, key: string): boolean {
  return flight.kind === 'map' && flight.pairs.some((pair) => pair.key.text === key);
}
