import type { Path, SourceDocument, SourceNode } from '../source/source.ts';

/**
 * A field as its writer finds it in the file, such as "`skein.strip.width` in motor 1" or "`time` in flight 3". Flights
 * and setups go by their own number or id, other items of lists by their place, counted from 1.
 */
export function fieldName(source: SourceDocument, path: Path): string {
  const parts: string[] = [];
  let keys: string[] = [];
  let node: SourceNode | null = source.root;
  for (const segment of path) {
    if (node?.kind === 'list') {
      const item: SourceNode | null = node.items[Number(segment)] ?? null;
      parts.unshift(itemName(keys, item, Number(segment)));
      keys = [];
      node = item;
    } else if (typeof segment === 'string') {
      keys.push(segment);
      node = valueAt(node, segment);
    }
  }
  if (keys.length > 0) parts.unshift(`\`${keys.join('.')}\``);
  return parts.join(' in ') || 'the file';
}

function itemName(keys: readonly string[], item: SourceNode | null, index: number): string {
  const list = keys.at(-1) ?? '';
  const named = names.get(list);
  if (named === undefined) return `item ${index + 1} of \`${keys.join('.')}\``;
  const own = (named.by ?? [])
    .map((key) => valueAt(item, key))
    .find((value) => value?.kind === 'scalar' && value.text !== '');
  return `${named.as} ${own?.kind === 'scalar' ? own.text : index + 1}`;
}

function valueAt(node: SourceNode | null, key: string): SourceNode | null {
  if (node?.kind !== 'map') return null;
  return node.pairs.find((pair) => pair.key.text === key)?.value ?? null;
}

/** What one item of a list is called, and the keys it goes by where it has one of them. */
const names: ReadonlyMap<string, { readonly as: string; readonly by?: readonly string[] }> = new Map([
  ['flights', { as: 'flight', by: ['number', 'flight'] }],
  ['setups', { as: 'setup', by: ['id'] }],
  ['divisions', { as: 'division', by: ['id'] }],
  ['rounds', { as: 'round', by: ['id'] }],
  ['motors', { as: 'motor' }],
  ['panels', { as: 'panel' }],
  ['glides', { as: 'glide' }],
  ['photos', { as: 'photo' }],
  ['milestones', { as: 'milestone' }],
  ['amendments', { as: 'amendment' }],
  ['stretch-tests', { as: 'stretch test' }],
  ['torque-tests', { as: 'torque test' }],
  ['inspected', { as: 'inspection' }],
  ['links', { as: 'link' }],
]);
