import type { Shape } from '../../entries/describe/field.ts';
import type { Problem } from '../../entries/problems/problem.ts';
import type { Path, Plain } from '../../entries/source/source.ts';
import { isList, isMap } from '../../entries/write/yaml-text.ts';
import { shapeBelow, shapeOfEntry, shortKey } from './put-field.ts';

/** Codes of what is not there yet. */
const gaps: ReadonlySet<string> = new Set([
  'missing-field',
  'empty-field',
  'mass-missing',
  'skein-incomplete',
  'time-missing',
]);

/** Whether a problem is that something is still to be filled in, which nobody has done wrong yet. */
export function isGapOf({ code }: Pick<Problem, 'code'>): boolean {
  return gaps.has(code);
}

/** Where one types what is missing, where any of several would do. */
const firstOf: Readonly<Record<string, string>> = { mass: 'airframe' };

/**
 * The field of the form in which one would mend a problem at a path of the text. In the text one value may stand for a list or
 * a map; in the form it stands in a box of its own. What is missing stands where it is to be typed.
 *
 * @param written the fields as they are written
 */
export function placeInForm(written: Plain, path: Path, code: string): Path {
  const place: (string | number)[] = [];
  let shape: Shape | null = shapeOfEntry;
  let node: Plain | undefined = written;
  for (const step of path) {
    if (shape?.kind === 'list' && typeof step === 'string') {
      place.push(0);
      shape = shape.of;
    }
    place.push(step);
    shape = shapeBelow(shape, step);
    node = within(node, step);
  }
  const list = String(place.findLast((step) => typeof step === 'string') ?? '');
  // These are told at the head of the part in which one of several is missing.
  if (code === 'time-missing') return [...place.slice(0, 2), 'time'];
  if (code === 'mass-missing') return [...place.slice(0, place.lastIndexOf('mass') + 1), 'airframe'];
  if (typeof node === 'string' && node !== '') return [...place, ...boxOf(shape)];
  const isThere = node !== undefined && node !== '';
  return isThere || !gaps.has(code) ? place : [...place, ...firstBox(shape, list)];
}

/** The box in which one text stands that stands for more. */
function boxOf(shape: Shape | null): Path {
  if (shape?.kind === 'list') return shape.of.kind === 'word' ? [] : [0, ...boxOf(shape.of)];
  const short = shortKey(shape);
  return short === null ? [] : [short];
}

/** The first box of what is not there at all. */
function firstBox(shape: Shape | null, key: string): Path {
  if (shape === null) return [];
  if (shape.kind === 'list') return shape.of.kind === 'word' ? [] : [0, ...firstBox(shape.of, key)];
  const map = shape.kind === 'either' ? shape.shapes.find(({ kind }) => kind === 'map') : shape;
  if (map?.kind !== 'map') return [];
  const first =
    map.fields.find(({ required }) => required) ?? map.fields.find((one) => one.key === firstOf[key]);
  return first === undefined ? [] : [first.key, ...firstBox(first.shape, first.key)];
}

function within(node: Plain | undefined, step: string | number): Plain | undefined {
  if (node === undefined) return undefined;
  if (isList(node)) return typeof step === 'number' ? node[step] : undefined;
  return isMap(node) && Object.hasOwn(node, String(step)) ? node[String(step)] : undefined;
}
