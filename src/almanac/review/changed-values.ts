import type { Shape } from '../../entries/describe/field.ts';
import { fieldName } from '../../entries/problems/field-name.ts';
import type { Path, SourceDocument, SourceNode } from '../../entries/source/source.ts';
import { type ReadBack, readBack, shapeWithin } from './read-back.ts';

/** One value of a file that is not the same on both sides. */
export interface ChangedValue {
  /** As its writer finds it, such as "`time` in flight 3". */
  readonly field: string;
  /** The number of the flight it stands in; null outside flights. */
  readonly flight: string | null;
  /** As written, several in one list with commas between them; null where there is none. */
  readonly before: string | null;
  readonly after: string | null;
  /** How what stands there now was understood, one for each number; empty for what is no number. */
  readonly read: readonly ReadBack[];
}

/** A node of one side with its path there; null where that side has none. */
type Standing = { readonly node: SourceNode; readonly path: Path } | null;

interface Reviewed {
  readonly before: SourceDocument | null;
  readonly after: SourceDocument | null;
}

/** What makes two items of a list the same one; elsewhere it is their place in the list. */
const identities: Readonly<Record<string, readonly string[]>> = {
  flights: ['number', 'flight'],
  setups: ['id'],
  divisions: ['id'],
  rounds: ['id'],
};

/** The values of a file's fields that were added, changed or taken away, in the order of the file. */
export function changedValues(
  before: SourceDocument | null,
  after: SourceDocument | null,
  shape: Shape | null,
): readonly ChangedValue[] {
  const start = (source: SourceDocument | null): Standing =>
    source === null ? null : { node: source.root, path: [] };
  return within({ before, after }, start(before), start(after), shape, null);
}

function within(
  documents: Reviewed,
  before: Standing,
  after: Standing,
  shape: Shape | null,
  flight: string | null,
): ChangedValue[] {
  if (isPlain(before) && isPlain(after)) return plain(documents, before, after, shape, flight);
  const key = (after ?? before)?.path.at(-1);
  const list = typeof key === 'string' ? key : '';
  const [was, is] = [parts(before, list), parts(after, list)];
  return [...new Set([...is.keys(), ...was.keys()])].flatMap((name) => {
    const [old, fresh] = [was.get(name) ?? null, is.get(name) ?? null];
    const step = (fresh ?? old)?.path.at(-1) ?? name;
    const inFlight = list === 'flights' && (after ?? before)?.path.length === 1 ? name : flight;
    return within(documents, old, fresh, shapeWithin(shape, step), inFlight);
  });
}

function plain(
  documents: Reviewed,
  before: Standing,
  after: Standing,
  shape: Shape | null,
  flight: string | null,
): ChangedValue[] {
  const [was, is] = [texts(before), texts(after)];
  if (was.join('\u0000') === is.join('\u0000') && (before === null) === (after === null)) return [];
  const [source, path] =
    after === null ? [documents.before, before?.path ?? []] : [documents.after, after.path];
  return [
    {
      field: source === null ? '' : fieldName(source, path),
      flight,
      before: before === null ? null : was.join(', '),
      after: after === null ? null : is.join(', '),
      read: is.flatMap((text) => readBack(text, shape) ?? []),
    },
  ];
}

/** A single text, or a list of nothing but texts. One text and a list of that one text say the same. */
function isPlain(standing: Standing): boolean {
  if (standing === null) return true;
  const { node } = standing;
  return (
    node.kind === 'scalar' || (node.kind === 'list' && node.items.every(({ kind }) => kind === 'scalar'))
  );
}

function texts(standing: Standing): readonly string[] {
  if (standing === null) return [];
  const { node } = standing;
  if (node.kind === 'scalar') return [node.text];
  return node.kind === 'list' ? node.items.map((item) => (item.kind === 'scalar' ? item.text : '')) : [];
}

/** What stands in a map or a list, by key or by what tells its items apart. */
function parts(standing: Standing, list: string): Map<string, NonNullable<Standing>> {
  const found = new Map<string, NonNullable<Standing>>();
  if (standing === null) return found;
  const { node, path } = standing;
  const add = (name: string, inner: SourceNode, step: string | number) => {
    if (!found.has(name)) found.set(name, { node: inner, path: [...path, step] });
  };
  if (node.kind === 'scalar') add(node.text, node, 0);
  else if (node.kind === 'list')
    node.items.forEach((item, index) => {
      add(identityOf(item, list) ?? String(index), item, index);
    });
  else for (const { key, value } of node.pairs) add(key.text, value, key.text);
  return found;
}

function identityOf(item: SourceNode, list: string): string | null {
  const by = Object.hasOwn(identities, list) ? identities[list] : undefined;
  if (by === undefined || item.kind !== 'map') return null;
  const value = item.pairs.find(({ key }) => by.includes(key.text))?.value;
  return value?.kind === 'scalar' && value.text !== '' ? value.text : null;
}
