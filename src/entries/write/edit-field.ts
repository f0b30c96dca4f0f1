import type * as z from 'zod';
import { keysAt } from '../schema/field-at.ts';
import type { Path, Plain } from '../source/source.ts';
import type { Change } from './after.ts';
import { isList, isMap } from './yaml-text.ts';

/**
 * The change that writes a value at a path of a file of the schema, whatever of its surroundings is there yet: maps and lists
 * that are missing on the way come with it, and a new key stands where the schema lists it. An item behind the last of
 * a list is appended to it. Null where a text stands on the way, or a list is shorter than the path says.
 */
export function settingField(
  schema: z.core.$ZodType,
  fields: Plain,
  path: Path,
  value: Plain,
): Change | null {
  let node: Plain = fields;
  for (const [depth, step] of path.entries()) {
    const inner = child(node, step);
    const isLast = depth === path.length - 1;
    if (inner !== undefined && !isLast && inner !== '') {
      node = inner;
      continue;
    }
    const at = path.slice(0, depth + 1);
    const nested = wrapped(path.slice(depth + 1), value);
    if (nested === null) return null;
    if (isList(node)) {
      if (typeof step !== 'number' || step > node.length) return null;
      return step < node.length
        ? { do: 'set', at, value: nested }
        : { do: 'append', at: path.slice(0, depth), value: nested };
    }
    if (!isMap(node)) return null;
    const keys = keysAt(schema, path.slice(0, depth));
    const place = keys.indexOf(String(step));
    return { do: 'set', at, value: nested, before: place < 0 ? [] : keys.slice(place + 1) };
  }
  return null;
}

/**
 * The change that takes a field or an item out, with every map and list that holds nothing else; null where there is
 * nothing at the path.
 */
export function removingField(fields: Plain, path: Path): Change | null {
  let node: Plain = fields;
  let from = 0;
  for (const [depth, step] of path.entries()) {
    const inner = child(node, step);
    if (inner === undefined) return null;
    if (sizeOf(node) > 1) from = depth;
    node = inner;
  }
  return path.length === 0 ? null : { do: 'remove', at: path.slice(0, from + 1) };
}

function child(node: Plain, step: string | number): Plain | undefined {
  if (isList(node)) return typeof step === 'number' ? node[step] : undefined;
  return isMap(node) && Object.hasOwn(node, String(step)) ? node[String(step)] : undefined;
}

function sizeOf(node: Plain): number {
  if (isList(node)) return node.length;
  return isMap(node) ? Object.keys(node).length : 0;
}

/** The value inside the maps and lists that the rest of a path names; null where a list would begin with a gap. */
export function wrapped(path: Path, value: Plain): Plain | null {
  const [step, ...rest] = path;
  if (step === undefined) return value;
  const inner = wrapped(rest, value);
  if (inner === null) return null;
  if (typeof step === 'number') return step === 0 ? [inner] : null;
  return { [step]: inner };
}
