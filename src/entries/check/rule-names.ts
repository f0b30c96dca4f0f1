import { fieldName } from '../problems/field-name.ts';
import { problemAt } from '../problems/make-problem.ts';
import type { ChallengeCheck } from './challenge-check.ts';
import { type Named, relatedAt, repeated } from './first-of.ts';

/** Divisions and rounds have ids of their own. */
export const checkRuleNames: ChallengeCheck = (draft, source) =>
  (['divisions', 'rounds'] as const).flatMap((key) => {
    const ids = (draft[key] ?? []).flatMap((item, index): Named[] =>
      item?.id === undefined ? [] : [{ name: item.id, path: [key, index, 'id'] }],
    );
    return repeated(ids).map(({ item, first }) =>
      problemAt(source, item.path, 'value', 'duplicate-id', {
        message: `${fieldName(source, item.path)}: two ${key} are called "${item.name}". Write an id that no other has.`,
        found: item.name,
        accepted: 'an id that no other has',
        related: relatedAt(source, first.path, `"${item.name}" stands here first`),
      }),
    );
  });
