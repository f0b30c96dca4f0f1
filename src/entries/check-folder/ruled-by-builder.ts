import { problemAt } from '../problems/make-problem.ts';
import type { Problem } from '../problems/problem.ts';
import { locate } from '../source/locate.ts';
import type { FolderCheck } from './folder-check.ts';

/** Nobody rules on a model of their own. */
export const ruledByBuilder: FolderCheck = {
  code: 'ruled-by-builder',
  scope: 'ruling',
  check({ entries, rulings }) {
    const byAddress = new Map(entries.map((entry) => [`${entry.value.challenge}/${entry.value.id}`, entry]));
    return rulings.flatMap(({ value: ruling, source }): Problem[] => {
      const entry = byAddress.get(`${ruling.challenge}/${ruling.entry}`);
      if (entry === undefined) return [];
      return ruling.flights.flatMap(({ flight, by }, index): Problem[] => {
        if (!entry.value.builders.some(({ handle }) => handle === by)) return [];
        return [
          problemAt(source, ['flights', index, 'by'], 'value', 'ruled-by-builder', {
            message: `Flight ${flight} is ruled by "${by}", who built "${entry.value.name}". Let somebody else look at it and rule again.`,
            found: by,
            accepted: 'the handle of somebody who did not build the model',
            related: {
              ...locate(entry.source, ['builder'], 'value'),
              message: 'The builders of the entry stand here.',
            },
          }),
        ];
      });
    });
  },
};
