import { nodeAt } from './locate.ts';
import type { Path, SourceDocument } from './source.ts';

/** Where a setup stands in its entry's file: the file itself for the entry as first written. */
export function pathOfSetup(source: SourceDocument, id: string | null): Path {
  const setups = nodeAt(source, ['setups']);
  if (id === null || setups?.kind !== 'list') return [];
  const index = setups.items.findIndex((_, at) => {
    const node = nodeAt(source, ['setups', at, 'id']);
    return node?.kind === 'scalar' && node.text === id;
  });
  return index < 0 ? ['setups'] : ['setups', index];
}
