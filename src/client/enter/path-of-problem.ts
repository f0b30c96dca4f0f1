import type { Place, Problem } from '../../entries/problems/problem.ts';
import { entry } from '../../entries/schema/entry.ts';
import { keysAt } from '../../entries/schema/field-at.ts';
import type { Path, SourceDocument, SourceNode } from '../../entries/source/source.ts';

/**
 * The field that a problem is about: the innermost one whose key or value begins where the problem does, or holds it. Of a
 * missing field, which has no place, it is the place it would have. Empty for what is about the file.
 */
export function pathOfProblem(source: SourceDocument, problem: Problem): Path {
  const path = pathAt(source, offsetOf(source, problem));
  if (problem.code !== 'missing-field') return path;
  // A missing field is told at the key above it, or at the first one of its item, and offered as a line to write.
  const key = /^([^:]+):/.exec(problem.suggestion ?? '')?.[1];
  if (key === undefined) return path;
  return [...(keysAt(entry, path).includes(key) ? path : path.slice(0, -1)), key];
}

/** The innermost field whose key or value holds an offset of the text. */
function pathAt(source: SourceDocument, offset: number): Path {
  const path: (string | number)[] = [];
  let node: SourceNode | null = source.root;
  while (node !== null && node.kind !== 'scalar') {
    const next = stepTo(node, offset);
    if (next === null) break;
    path.push(next.step);
    // On a key, the whole value is meant.
    node = next.onKey ? null : next.node;
  }
  return path;
}

function stepTo(
  node: Exclude<SourceNode, { kind: 'scalar' }>,
  offset: number,
): { readonly step: string | number; readonly node: SourceNode; readonly onKey: boolean } | null {
  if (node.kind === 'list') {
    const index = node.items.findLastIndex((item) => item.start <= offset && offset <= item.end);
    const item = node.items[index];
    return item === undefined ? null : { step: index, node: item, onKey: false };
  }
  const pair = node.pairs.findLast(
    ({ key, value }) => key.start <= offset && offset <= Math.max(key.end, value.end),
  );
  return pair === undefined
    ? null
    : { step: pair.key.text, node: pair.value, onKey: offset <= pair.key.end && offset < pair.value.start };
}

function offsetOf({ lines }: SourceDocument, { line, column }: Place): number {
  return (lines[line - 1] ?? 0) + column - 1;
}
