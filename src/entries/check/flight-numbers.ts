import { problemAt } from '../problems/make-problem.ts';
import type { EntryCheck } from './entry-check.ts';
import { type Named, relatedAt, repeated } from './first-of.ts';

/** A number belongs to one flight of the entry. */
export const checkFlightNumbers: EntryCheck = (draft, source) => {
  const numbers = (draft.flights ?? []).map((flight) => flight?.number);
  const free = String(Math.max(0, ...numbers.filter((number) => number !== undefined)) + 1);
  const named = numbers.flatMap((number, index): Named[] =>
    number === undefined ? [] : [{ name: String(number), path: ['flights', index, 'number'] }],
  );
  return repeated(named).map(({ item, first }) =>
    problemAt(source, item.path, 'value', 'duplicate-flight', {
      message: `\`number\`: two flights have the number ${item.name}. A number is given once and never again; ${free} is free.`,
      found: item.name,
      accepted: 'a number that no other flight has',
      suggestion: free,
      related: relatedAt(source, first.path, `flight ${item.name} stands here first`),
    }),
  );
};
