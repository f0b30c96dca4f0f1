import { problemAt } from '../problems/make-problem.ts';
import type { Problem } from '../problems/problem.ts';
import type { RulingFields } from '../schema/ruling.ts';
import type { SourceDocument } from '../source/source.ts';
import type { Draft } from '../understand/draft.ts';
import { relatedAt } from './first-of.ts';

/** A decision is confirmed by somebody else than who made it. */
export function checkSecondIsAnother(draft: Draft<RulingFields>, source: SourceDocument): Problem[] {
  return (draft.flights ?? []).flatMap((ruling, index): Problem[] => {
    if (ruling?.second === undefined || ruling.second !== ruling.by) return [];
    const flight = ruling.flight === undefined ? 'a flight' : `flight ${ruling.flight}`;
    return [
      problemAt(source, ['flights', index, 'second'], 'value', 'second-is-the-first', {
        message: `\`second\`: "${ruling.second}" confirms a decision of their own on ${flight}. Name somebody else, or leave \`second\` out.`,
        found: ruling.second,
        accepted: 'another handle than that of `by`',
        related: relatedAt(source, ['flights', index, 'by'], `"${ruling.by}" decided`),
      }),
    ];
  });
}
