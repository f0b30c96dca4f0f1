import { describeShape } from '../../entries/describe/describe-shape.ts';
import type { Shape } from '../../entries/describe/field.ts';
import { entry } from '../../entries/schema/entry.ts';
import type { Path, Plain } from '../../entries/source/source.ts';
import type { Change } from '../../entries/write/after.ts';
import { removingField, settingField, wrapped } from '../../entries/write/edit-field.ts';
import { isList, isMap } from '../../entries/write/yaml-text.ts';

export const shapeOfEntry = describeShape(entry);

/**
 * The changes of an entry's text that put a value, or nothing for null, in a field. Where one text stands for a list or
 * a map, it makes way for more; where one says all, it stands for them. Null where the text has no place for the field.
 *
 * @param plain the fields as they are written
 */
export function puttingField(plain: Plain, path: Path, value: Plain | null): readonly Change[] | null {
  if (value === null) {
    const there = inText(plain, path);
    const removing = there.rest.length > 0 ? null : removingField(plain, there.at);
    return removing === null ? [] : [removing];
  }
  const { at, node, shape, rest } = inText(plain, path);
  const [step, ...further] = rest;
  // What stands there already keeps its quotes and its brackets.
  if (step === undefined) return same(node, value) ? [] : [{ do: 'set', at, value, spread: true }];
  if (typeof step === 'number' && isWritten(node) && !isList(node)) {
    const item = wrapped(further, value);
    return step === 1 && item !== null ? [{ do: 'append', at, value: item, spread: true }] : null;
  }
  if (typeof step === 'string' && typeof node === 'string' && node !== '') {
    const short = shortKey(shape);
    const inner = wrapped(rest, value);
    if (short === null || inner === null || !isMap(inner)) return null;
    return [{ do: 'set', at, value: { [short]: node, ...inner }, spread: true }];
  }
  const setting = settingField(entry, plain, [...at, ...shortened(shape, rest)], value);
  return setting === null || setting.do === 'remove' ? null : [{ ...setting, spread: true }];
}

interface InText {
  /** The part of the path that leads to something written. */
  readonly at: Path;
  readonly node: Plain;
  readonly shape: Shape | null;
  /** What of the path leads on from there. */
  readonly rest: Path;
}

/** How far a path leads in the text, where one value may stand for a list or a map of it. */
function inText(plain: Plain, path: Path): InText {
  let found: InText = { at: [], node: plain, shape: shapeOfEntry, rest: path };
  for (let [step, ...rest] = path; step !== undefined; [step, ...rest] = rest) {
    const { at, node, shape } = found;
    const inner = shapeBelow(shape, step);
    const standsForIt =
      isWritten(node) && (step === 0 ? !isList(node) : typeof node === 'string' && step === shortKey(shape));
    const next = standsForIt ? node : childOf(node, step);
    if (next === undefined) return found;
    found = { at: standsForIt ? at : [...at, step], node: next, shape: inner, rest };
  }
  return found;
}

/** The rest of a path without the steps that need not be written: the first of a list that may stand alone, the text of a map. */
function shortened(shape: Shape | null, [step, ...rest]: Path): Path {
  if (step === undefined) return [];
  const inner = shapeBelow(shape, step);
  const alone = step === 0 && shape?.kind === 'list' && shape.orOne;
  const says = rest.length === 0 && shape?.kind === 'either' && step === shortKey(shape);
  return [...(alone || says ? [] : [step]), ...shortened(inner, rest)];
}

/** The field of a map for which one text may stand; null where none may. */
export function shortKey(shape: Shape | null): string | null {
  if (shape?.kind !== 'either') return null;
  const map = shape.shapes.find((one) => one.kind === 'map');
  const first = map?.fields.find(({ required }) => required);
  const form = JSON.stringify(first?.shape);
  return first !== undefined && shape.shapes.some((one) => JSON.stringify(one) === form) ? first.key : null;
}

/** What may stand in a part of a shape; null where it has no such part. */
export function shapeBelow(shape: Shape | null, step: string | number): Shape | null {
  if (shape?.kind === 'list') return typeof step === 'number' ? shape.of : null;
  if (shape?.kind === 'map') return shape.fields.find(({ key }) => key === step)?.shape ?? shape.others;
  if (shape?.kind !== 'either') return null;
  return shape.shapes.map((one) => shapeBelow(one, step)).find((one) => one !== null) ?? null;
}

function childOf(node: Plain, step: string | number): Plain | undefined {
  if (isList(node)) return typeof step === 'number' ? node[step] : undefined;
  return isMap(node) && Object.hasOwn(node, String(step)) ? node[String(step)] : undefined;
}

function same(a: Plain, b: Plain): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}

function isWritten(node: Plain): boolean {
  return node !== '';
}
