import { problemAt } from '../problems/make-problem.ts';
import type { Problem } from '../problems/problem.ts';
import { locate } from '../source/locate.ts';
import type { FolderCheck } from './folder-check.ts';

export const unknownFlight: FolderCheck = {
  code: 'unknown-flight',
  scope: 'ruling',
  check({ entries, rulings }) {
    const byAddress = new Map(entries.map((entry) => [`${entry.value.challenge}/${entry.value.id}`, entry]));
    return rulings.flatMap(({ value: ruling, source }): Problem[] => {
      const entry = byAddress.get(`${ruling.challenge}/${ruling.entry}`);
      if (entry === undefined) return [];
      const numbers = entry.value.flights.map(({ number }) => number);
      return ruling.flights.flatMap(({ flight }, index) => {
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
      });
    });
  },
};
