import type { Field, Shape } from '../describe/field.ts';
import type { Plain } from '../source/source.ts';
import { fieldLines, isList, isMap } from '../write/yaml-text.ts';

/** The fields of a file, or of a map in it. */
export type PlainMap = { readonly [key: string]: Plain };

/** What a new file begins with. */
export interface Beginnings {
  /** What is known of it yet. */
  readonly given: PlainMap;
  /** Fields that stand as remarks to be uncovered, with dots between their keys; through lists without numbers. */
  readonly offered: readonly string[];
  /** The text below the fields. */
  readonly body: string;
}

/**
 * The text of a new file: what is known as fields, in the order of the schema; each required field that is missing, and each
 * that is offered, as a remark with an example and what it is, so that it counts once its `#` is taken away.
 */
export function beginFile(fields: readonly Field[], { given, offered, body }: Beginnings): string {
  return ['---', ...mapLines(fields, given, offered), '---', body].join('\n');
}

function mapLines(fields: readonly Field[], given: PlainMap, offered: readonly string[]): string[] {
  const known = new Set(fields.map(({ key }) => key));
  const own = Object.entries(given).filter(([key]) => !known.has(key));
  return [
    ...fields.flatMap((field) => linesOf(field, given[field.key], offered)),
    ...own.flatMap(([key, value]) => fieldLines(key, value)),
  ];
}

function linesOf(field: Field, value: Plain | undefined, offered: readonly string[]): string[] {
  const { key, shape, required } = field;
  if (value === undefined) return required || offered.includes(key) ? [remark(field)] : [];
  const below = offered.flatMap((name) => (name.startsWith(`${key}.`) ? [name.slice(key.length + 1)] : []));
  const inner = innerLines(shape, value, below);
  return inner.some(isRemark)
    ? [`${key}:`, ...inner.map((line) => `  ${line}`)]
    : fieldLines(key, inOrder(shape, value));
}

/** The lines of a map, or of a list of maps, below its key; none for anything else. */
function innerLines(shape: Shape, value: Plain, offered: readonly string[]): string[] {
  if (shape.kind === 'map' && isMap(value)) return fieldLast(mapLines(shape.fields, value, offered));
  if (shape.kind !== 'list' || shape.of.kind !== 'map' || !isList(value)) return [];
  const { fields } = shape.of;
  return value.flatMap((item) => {
    const [first, ...others] = isMap(item) ? fieldLast(mapLines(fields, item, offered)) : [];
    return first === undefined ? [] : [`- ${first}`, ...others.map((line) => `  ${line}`)];
  });
}

/** The lines with a field behind all remarks: what is written behind the map later would part them from it. */
function fieldLast(lines: readonly string[]): string[] {
  const last = lines.findLastIndex((line) => /^[^\s#]/.test(line));
  const end = lines.findIndex((line, index) => index > last && line.startsWith('#'));
  if (last < 0 || end < 0) return [...lines];
  return [...lines.slice(0, last), ...lines.slice(end), ...lines.slice(last, end)];
}

function remark({ key, example, description, required }: Field): string {
  return `# ${key}: ${example}   # ${required ? 'needed: ' : ''}${description}`;
}

function isRemark(line: string): boolean {
  return /^\s*(?:- )?#/.test(line);
}

/** A value with its keys as the schema lists them, those of one's own behind. */
export function inOrder(shape: Shape, value: Plain): Plain {
  if (shape.kind === 'either') return shape.shapes.reduce((ordered, inner) => inOrder(inner, ordered), value);
  if (shape.kind === 'list')
    return isList(value) ? value.map((item) => inOrder(shape.of, item)) : inOrder(shape.of, value);
  if (shape.kind !== 'map' || !isMap(value)) return value;
  const keys = shape.fields.flatMap((field) => {
    const inner = value[field.key];
    return inner === undefined ? [] : [[field.key, inOrder(field.shape, inner)] as const];
  });
  return { ...Object.fromEntries(keys), ...without(value, new Set(keys.map(([key]) => key))) };
}

function without(value: PlainMap, keys: ReadonlySet<string>): PlainMap {
  return Object.fromEntries(Object.entries(value).filter(([key]) => !keys.has(key)));
}
