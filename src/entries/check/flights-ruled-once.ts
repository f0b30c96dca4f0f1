import { problemAt } from '../problems/make-problem.ts';
import type { Problem } from '../problems/problem.ts';
import type { RulingFields } from '../schema/ruling.ts';
import type { SourceDocument } from '../source/source.ts';
import type { Draft } from '../understand/draft.ts';
import { type Named, relatedAt, repeated } from './first-of.ts';

/** A flight has one ruling; what was decided before stands in its `earlier`. */
export function checkFlightsRuledOnce(draft: Draft<RulingFields>, source: SourceDocument): Problem[] {
  const flights = (draft.flights ?? []).flatMap((ruling, index): Named[] =>
    ruling?.flight === undefined ? [] : [{ name: String(ruling.flight), path: ['flights', index, 'flight'] }],
  );
  return repeated(flights).map(({ item, first }) =>
    problemAt(source, item.path, 'value', 'duplicate-ruling', {
      message: `\`flight\`: flight ${item.name} is ruled twice. Keep the ruling that holds, and move the other to its \`earlier\`.`,
      found: item.name,
      accepted: 'one ruling for each flight',
      related: relatedAt(source, first.path, `flight ${item.name} is ruled here first`),
    }),
  );
}
