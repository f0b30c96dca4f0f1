import { problemAt } from '../problems/make-problem.ts';
import type { Problem } from '../problems/problem.ts';
import { locate } from '../source/locate.ts';
import type { FolderCheck } from './folder-check.ts';
import { type RuledFlight, ruledFlights } from './ruled-flights.ts';

/** Nobody rules on a model of their own. */
export const ruledByBuilder: FolderCheck = {
  code: 'ruled-by-builder',
  scope: 'ruling',
  check: (content) => ruledFlights(content).flatMap(ruledByItsBuilder),
};

function ruledByItsBuilder({ ruled: { flight, by }, index, source, entry }: RuledFlight): Problem[] {
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
}
