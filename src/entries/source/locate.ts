import type { Place } from '../problems/problem.ts';
import { lineEnd, positionAt } from './line-index.ts';
import type { Path, Plain, SourceDocument, SourceNode, SourceScalar } from './source.ts';

/**
 * Where a field stands. A path that leads nowhere ends at the nearest field above it that exists: at its key, or at the
 * first line of the file. Where the schema made a list of a single value, or a map of a single text, the path stays on
 * what was written. An empty value has no place of its own; its key stands for it.
 */
export function locate(source: SourceDocument, path: Path, part: 'key' | 'value'): Place {
  const { node, key, found } = walk(source.root, path);
  const range = rangeOf(source, node, key, found ? part : 'key');
  const from = positionAt(source.lines, range.start);
  const to = positionAt(source.lines, range.end);
  return { file: source.file, line: from.line, column: from.column, endLine: to.line, endColumn: to.column };
}

/** The node at a path; null where the path leads nowhere. */
export function nodeAt(source: SourceDocument, path: Path): SourceNode | null {
  const { node, found } = walk(source.root, path);
  return found ? node : null;
}

/** Text, lists and maps without a prototype; of a key that stands twice, the first. */
export function toPlain(node: SourceNode): Plain {
  if (node.kind === 'scalar') return node.text;
  if (node.kind === 'list') return node.items.map(toPlain);
  const plain: Record<string, Plain> = Object.create(null);
  for (const { key, value } of node.pairs) if (!(key.text in plain)) plain[key.text] = toPlain(value);
  return plain;
}

interface Step {
  readonly node: SourceNode;
  /** The key that leads to the node; null for an item of a list and for the root. */
  readonly key: SourceScalar | null;
  readonly found: boolean;
}

function walk(root: SourceNode, path: Path): Step {
  let at: Step = { node: root, key: null, found: true };
  for (const segment of path) {
    const next = stepInto(at, segment);
    if (next === null) return { ...at, found: false };
    at = next;
  }
  return at;
}

function stepInto(at: Step, segment: string | number): Step | null {
  if (at.node.kind === 'list') {
    const item = /^\d+$/.test(String(segment)) ? at.node.items[Number(segment)] : undefined;
    return item === undefined ? null : { node: item, key: null, found: true };
  }
  if (at.node.kind === 'map') {
    const pair = at.node.pairs.find(({ key }) => key.text === String(segment));
    if (pair !== undefined) return { node: pair.value, key: pair.key, found: true };
    return segment === 0 ? at : null;
  }
  return segment === 0 || typeof segment === 'string' ? at : null;
}

function rangeOf(
  source: SourceDocument,
  node: SourceNode,
  key: SourceScalar | null,
  part: 'key' | 'value',
): { readonly start: number; readonly end: number } {
  const empty = node.kind === 'scalar' && node.start === node.end;
  if (key !== null && (part === 'key' || empty)) return key;
  if (node === source.root) return { start: 0, end: lineEnd(source.text, 0) };
  if (part === 'key' && node.kind === 'map') return node.pairs[0]?.key ?? node;
  return node;
}
