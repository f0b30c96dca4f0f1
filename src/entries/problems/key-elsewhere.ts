import * as z from 'zod';
import { describedAt, schemasAt } from '../schema/field-at.ts';
import type { Path } from '../source/source.ts';

/** A place at which a key is known; in it 0 stands for any item of a list. */
export interface Elsewhere {
  readonly path: Path;
  /** Required fields beside it, each as one would write it. */
  readonly beside: readonly string[];
}

/** What matters has been said after this many. */
const most = 3;

/**
 * Where else a key is known, the nearest first: by its own name, by that of its map and its own together (`wing span`), or
 * by its title (`blade angle`). Setups repeat the design, and their fields are looked for only from within one.
 */
export function keyElsewhere(known: readonly Known[], parent: Path, key: string): readonly Elsewhere[] {
  const from = asPattern(parent);
  const setups = from[0] === 'setups' ? ['setups', 0] : [];
  const found = known.filter(({ path, title }) => {
    const above = path.slice(0, -1);
    const keys = path.filter((segment) => typeof segment === 'string');
    const names = [keys.at(-1) ?? '', keys.slice(-2).join(''), title];
    return (
      names.some((name) => isSameWord(name, key)) &&
      isSame(path.slice(0, setups.length), setups) &&
      (setups.length > 0 || path[0] !== 'setups') &&
      !isSame(above, from)
    );
  });
  const steps = ({ path }: Known) => from.length + path.length - 2 * shared(from, path);
  const nearest = Math.min(...found.map(steps));
  return found
    .filter((place) => steps(place) === nearest)
    .slice(0, most)
    .map(({ path, form }) => ({ path, beside: requiredBeside(form, path.at(-1)) }));
}

/** The place in a sentence, as seen from a map: "in `wing`", "beside `skein`", "at the top of the file". */
export function whereIn({ path }: Elsewhere, parent: Path): string {
  const above = path.slice(0, -1);
  const from = asPattern(parent);
  if (isSame(from.slice(0, above.length), above)) {
    const beside = from.slice(above.length).find((segment) => typeof segment === 'string');
    return above.length === 0
      ? 'at the top of the file, without indentation'
      : `further out, beside \`${beside ?? from.at(-1)}\``;
  }
  const words: string[] = [];
  let keys: string[] = [];
  const isBelow = isSame(above.slice(0, from.length), from);
  for (const segment of isBelow ? above.slice(from.length) : above) {
    if (typeof segment === 'string') keys.push(segment);
    else {
      words.unshift(`an item of \`${keys.join('.')}\``);
      keys = [];
    }
  }
  if (keys.length > 0) words.unshift(`\`${keys.join('.')}\``);
  return `in ${words.join(' of ')}`;
}

/** The field as one would write it from a map on; null where the way leads outwards or through a list. */
export function writtenFrom({ path, beside }: Elsewhere, parent: Path, value: string): string | null {
  const from = asPattern(parent);
  if (!isSame(path.slice(0, from.length), from)) return null;
  const way = path.slice(from.length);
  if (way.length === 0 || way.some((segment) => segment === 0)) return null;
  const [key, ...maps] = way.toReversed();
  return maps.reduce<string>(
    (inner, map) => `${map}: { ${inner} }`,
    [`${key}: ${value}`, ...beside].join(', '),
  );
}

/** A field of a schema. */
export interface Known {
  readonly path: Path;
  readonly title: string;
  /** The map it is a key of. */
  readonly form: z.ZodObject;
}

/** Every field of a schema, those of maps and of items of lists included. */
export function knownFields(schema: z.core.$ZodType, above: Path = []): Known[] {
  return schemasAt(schema, []).flatMap((form): Known[] => {
    if (form instanceof z.ZodArray) return knownFields(form.element, [...above, 0]);
    if (!(form instanceof z.ZodObject)) return [];
    return Object.entries<z.core.$ZodType>(form.shape).flatMap(([key, inner]) => [
      { path: [...above, key], title: describedAt(form, [key])?.title ?? '', form },
      ...knownFields(inner, [...above, key]),
    ]);
  });
}

function requiredBeside(form: z.ZodObject, key: string | number | undefined): string[] {
  return Object.entries<z.core.$ZodType>(form.shape)
    .filter(([other, field]) => other !== key && !(field instanceof z.ZodOptional))
    .map(([other]) => `${other}: ${describedAt(form, [other])?.example ?? '…'}`);
}

function asPattern(path: Path): Path {
  return path.map((segment) => (typeof segment === 'number' ? 0 : segment));
}

function isSame(a: Path, b: Path): boolean {
  return a.length === b.length && shared(a, b) === a.length;
}

function shared(a: Path, b: Path): number {
  const differs = a.findIndex((segment, at) => segment !== b[at]);
  return differs < 0 ? a.length : differs;
}

/** Whether two words are the same but for case, hyphens and spaces. */
export function isSameWord(a: string, b: string): boolean {
  return bare(a) === bare(b);
}

function bare(word: string): string {
  return word.toLowerCase().replace(/[-_ ]/g, '');
}
