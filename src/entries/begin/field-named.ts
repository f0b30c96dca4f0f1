import type { Field, Shape } from '../describe/field.ts';
import { didYouMean } from '../problems/did-you-mean.ts';
import type { Path } from '../source/source.ts';

/** A field as somebody names it, found in the shape of its file. */
export interface NamedField {
  readonly path: Path;
  readonly shape: Shape;
  /** What the maps on the way and the field are called, such as Wing and Span; a key of one's own is its own title. */
  readonly titles: readonly string[];
  /** Null for a key of one's own. */
  readonly field: Field | null;
}

export type Found =
  | { readonly ok: true; readonly named: NamedField }
  | { readonly ok: false; readonly message: string };

/**
 * The field that words with dots between them name, such as `motors.skein.strip.width` or `motors.2.count`. Items of
 * lists are counted from 1, and the first goes without its number.
 */
export function fieldNamed(shape: Shape, name: string): Found {
  return walk({ path: [], shape, titles: [], field: null }, name, name.split('.'));
}

function walk(at: NamedField, name: string, steps: readonly string[]): Found {
  const [step, ...rest] = steps;
  if (step === undefined) return { ok: true, named: at };
  const { shape, path } = at;
  if (shape.kind === 'either') {
    const ways = shape.shapes.map((inner) => walk({ ...at, shape: inner }, name, steps));
    return ways.find(({ ok }) => ok) ?? ways.at(-1) ?? nothingBelow(name, step);
  }
  if (shape.kind === 'list') {
    if (/^[1-9]\d{0,3}$/.test(step))
      return walk({ ...at, path: [...path, Number(step) - 1], shape: shape.of }, name, rest);
    const one = shape.orOne ? path : [...path, 0];
    return walk({ ...at, path: one, shape: shape.of }, name, steps);
  }
  if (shape.kind !== 'map') return nothingBelow(name, step);
  const field = shape.fields.find(({ key }) => key === step);
  if (field !== undefined)
    return walk(
      { path: [...path, step], shape: field.shape, titles: [...at.titles, field.title], field },
      name,
      rest,
    );
  if (shape.others !== null && step !== '')
    return walk(
      { path: [...path, step], shape: shape.others, titles: [...at.titles, step], field: null },
      name,
      rest,
    );
  const keys = shape.fields.map(({ key }) => key);
  const near = didYouMean(step, keys);
  const hint = near === null ? `Known here: ${keys.join(', ')}.` : `Did you mean "${near}"?`;
  return { ok: false, message: `\`${name}\` names no field: "${step}" is not known. ${hint}` };
}

function nothingBelow(name: string, step: string): Found {
  return {
    ok: false,
    message: `\`${name}\` names no field: what stands before "${step}" holds one value, not fields.`,
  };
}
