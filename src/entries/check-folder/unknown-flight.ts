import { problemAt } from '../problems/make-problem.ts';
import type { Problem } from '../problems/problem.ts';
import { locate } from '../source/locate.ts';
import type { FolderCheck } from './folder-check.ts';
import { type RuledFlight, ruledFlights } from './ruled-flights.ts';

export const unknownFlight: FolderCheck = {
  code: 'unknown-flight',
  scope: 'ruling',
  check: (content) => ruledFlights(content).flatMap(withoutFlight),
};

function withoutFlight({ ruled: { flight }, index, source, entry }: RuledFlight): Problem[] {
  const numbers = entry.value.flights.map(({ number }) => number);
  if (numbers.includes(flight)) return [];
  const has = numbers.length === 0 ? 'no flights at all' : `the flights ${numbers.join(', ')}`;
  return [
    problemAt(source, ['flights', index, 'flight'], 'value', 'unknown-flight', {
      message: `The ruling is about flight ${flight}, but "${entry.value.name}" has ${has}.`,
      found: String(flight),
      accepted: numbers.length === 0 ? null : numbers.join(', '),
      related: {
        ...locate(entry.source, ['flights'], 'key'),
        message: 'The flights of the entry stand here.',
      },
    }),
  ];
}
