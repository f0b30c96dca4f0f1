import type { FrozenResult } from '../../contest/frozen/frozen.ts';
import { fieldName } from '../problems/field-name.ts';
import { problemAt } from '../problems/make-problem.ts';
import type { Problem } from '../problems/problem.ts';
import { frozenResult as schema } from '../schema/frozen-result.ts';
import type { SourceDocument } from '../source/source.ts';

/**
 * The frozen result of a challenge. Nobody edits it by hand, so its problems name the place and no more. The source is
 * that of a JSON file; null where anything is wrong with it.
 */
export function understandFrozenResult(
  source: SourceDocument,
  { challenge }: { readonly challenge: string },
): { readonly frozen: FrozenResult | null; readonly problems: readonly Problem[] } {
  const result = schema.safeParse(JSON.parse(source.text));
  if (!result.success)
    return {
      frozen: null,
      problems: result.error.issues.map((issue) => {
        const path = issue.path.map((key) => (typeof key === 'symbol' ? String(key) : key));
        return problemAt(source, path, 'value', 'not-a-frozen-result', {
          message: `${fieldName(source, path)} is not as \`npm run close\` writes it (${issue.message}). Take the file back from the history, or freeze the result again.`,
        });
      }),
    };
  if (result.data.challenge.id !== challenge)
    return {
      frozen: null,
      problems: [
        problemAt(source, ['challenge', 'id'], 'value', 'not-a-frozen-result', {
          message: `\`challenge.id\` is "${result.data.challenge.id}", but the file's name says ${challenge}. Take the file back from the history, or freeze the result again.`,
          found: result.data.challenge.id,
          accepted: challenge,
          suggestion: challenge,
        }),
      ],
    };
  const { standings, ...rest } = result.data;
  const frozen: FrozenResult = {
    ...rest,
    standings: standings.map(
      ({ 'tie-break': tieBreak, 'within-timing-error-of': withinTimingErrorOf, ...standing }) => ({
        ...standing,
        tieBreak,
        withinTimingErrorOf,
      }),
    ),
  };
  return { frozen, problems: [] };
}
