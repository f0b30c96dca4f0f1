import { problemAt } from '../problems/make-problem.ts';
import type { EntryCheck } from './entry-check.ts';
import { relatedAt, repeated } from './first-of.ts';

/** No builder is named twice in one entry. */
export const checkBuildersOnce: EntryCheck = (draft, source) => {
  const handles = (draft.builder ?? []).flatMap((builder, index) => {
    const handle = typeof builder === 'string' ? builder : builder?.handle;
    const path = ['builder', index, ...(typeof builder === 'string' ? [] : ['handle'])];
    return handle === undefined ? [] : [{ name: handle, path }];
  });
  return repeated(handles).map(({ item, first }) =>
    problemAt(source, item.path, 'value', 'duplicate-builder', {
      message: `\`builder\` names "${item.name}" twice; name each builder once.`,
      found: item.name,
      accepted: 'each builder once',
      related: relatedAt(source, first.path, `"${item.name}" is named here first`),
    }),
  );
};
