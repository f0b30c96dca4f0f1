import { problemAt } from '../problems/make-problem.ts';
import type { EntryCheck } from './entry-check.ts';
import { type Named, relatedAt, repeated } from './first-of.ts';

/** Setups have ids of their own, none of them `none`, and hold from different days on. */
export const checkSetupNames: EntryCheck = (draft, source) => {
  const setups = draft.setups ?? [];
  const ids = setups.flatMap((setup, index): Named[] =>
    setup?.id === undefined ? [] : [{ name: setup.id, path: ['setups', index, 'id'] }],
  );
  const days = setups.flatMap((setup, index): Named[] =>
    setup?.from === undefined ? [] : [{ name: setup.from, path: ['setups', index, 'from'] }],
  );
  return [
    ...ids
      .filter(({ name }) => name === 'none')
      .map(({ path }) =>
        problemAt(source, path, 'value', 'setup-named-none', {
          message:
            '`id`: a setup can\'t be called "none": flights use that word for the entry as first written. Write another id, such as "b".',
          found: 'none',
          accepted: 'any other id',
          suggestion: 'b',
        }),
      ),
    ...repeated(ids).map(({ item, first }) =>
      problemAt(source, item.path, 'value', 'duplicate-id', {
        message: `\`id\`: two setups are called "${item.name}". Write an id that no other setup has.`,
        found: item.name,
        accepted: 'an id that no other setup has',
        related: relatedAt(source, first.path, `"${item.name}" stands here first`),
      }),
    ),
    ...repeated(days).map(({ item, first }) =>
      problemAt(source, item.path, 'value', 'setups-same-day', {
        message: `\`from\`: two setups hold from ${item.name} on, so that none of them is the later one. Write another day, or make one setup of the two.`,
        found: item.name,
        accepted: 'a day from which no other setup holds',
        related: relatedAt(source, first.path, 'the other one holds from here'),
      }),
    ),
  ];
};
