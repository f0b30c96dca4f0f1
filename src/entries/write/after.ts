import type { Path, Plain } from '../source/source.ts';
import { isList, isMap } from './yaml-text.ts';

/**
 * One change of the fields of a file. A path leads to a field or an item; what it leads through must be there. With
 * `spread`, maps that are new get a line for each field, however short they are: for values to which more will come.
 */
export type Change =
  /** Writes a field in place of the one there is; else in front of the first that there is of `before`, else behind the last of its map. */
  | {
      readonly do: 'set';
      readonly at: Path;
      readonly value: Plain;
      readonly before?: readonly string[];
      readonly spread?: boolean;
    }
  /** Writes an item behind the last of a list, which is begun where there is none; one value may stand for a list of it. */
  | { readonly do: 'append'; readonly at: Path; readonly value: Plain; readonly spread?: boolean }
  /** Takes a field, or an item of a list, out; nothing where there is no such field. */
  | { readonly do: 'remove'; readonly at: Path };

/** What the fields must read as after a change, worked out from the values alone; null where the path leads nowhere. */
export function after(fields: Plain, change: Change): Plain | null {
  return changed(fields, change.at, change);
}

function changed(node: Plain, path: Path, change: Change): Plain | null {
  const [step, ...rest] = path;
  if (step === undefined) return null;
  if (isList(node)) {
    const item = node[Number(step)];
    if (item === undefined) return null;
    if (rest.length === 0 && change.do === 'remove') return node.filter((_, index) => index !== Number(step));
    const inner = rest.length === 0 ? atEnd(item, change) : changed(item, rest, change);
    return inner === null ? null : node.map((each, index) => (index === Number(step) ? inner : each));
  }
  if (!isMap(node)) return null;
  const { [String(step)]: present, ...others } = node;
  if (rest.length === 0) {
    if (change.do === 'remove') return others;
    const inner = atEnd(present ?? '', change);
    return inner === null ? null : { ...node, [String(step)]: inner };
  }
  const inner = present === undefined ? null : changed(present, rest, change);
  return inner === null ? null : { ...node, [String(step)]: inner };
}

function atEnd(present: Plain, change: Change): Plain | null {
  if (change.do === 'remove') return null;
  if (change.do === 'set') return change.value;
  if (isList(present)) return [...present, change.value];
  return present === '' ? [change.value] : [present, change.value];
}
