import { problemAt } from '../problems/make-problem.ts';
import type { Problem } from '../problems/problem.ts';
import type { RulingFields } from '../schema/ruling.ts';
import type { SourceDocument } from '../source/source.ts';
import type { Draft } from '../understand/draft.ts';

/** Who is refused is told why. */
export function checkReasonsGiven(draft: Draft<RulingFields>, source: SourceDocument): Problem[] {
  return (draft.flights ?? []).flatMap((ruling, index): Problem[] => {
    if (ruling === null || ruling.reason !== undefined) return [];
    if (ruling.verdict !== 'refused' && ruling.verdict !== 'void') return [];
    const flight = ruling.flight === undefined ? 'A flight' : `Flight ${ruling.flight}`;
    return [
      problemAt(source, ['flights', index, 'verdict'], 'value', 'reason-missing', {
        message: `${flight} is ${ruling.verdict}, and no reason is given. Write one that its builder can read, such as \`reason: The landing is not on the video.\``,
        found: ruling.verdict,
        accepted: '`reason` beside the verdict',
        suggestion: 'reason: The landing is not on the video.',
      }),
    ];
  });
}
