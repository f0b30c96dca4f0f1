import type { Plain } from '../source/source.ts';

/** Where a value will stand: brackets leave fewer texts that need no quotes. */
export type Style = 'block' | 'flow';

/** How long an item of a list may be that is written on one line. */
const longestItem = 100;

/** A value on one line: texts plain where YAML reads them back as they are, lists and maps in brackets. */
export function inline(value: Plain, style: Style): string {
  if (typeof value === 'string') return scalar(value, style);
  if (isList(value)) return `[${value.map((item) => inline(item, 'flow')).join(', ')}]`;
  const fields = Object.entries(value).map(
    ([key, inner]) => `${scalar(key, 'flow')}: ${inline(inner, 'flow')}`,
  );
  return fields.length === 0 ? '{}' : `{ ${fields.join(', ')} }`;
}

/**
 * `key: value` as the lines of a block that begins at its first column: one line for a text, a list of texts, a map of such;
 * an item on each line for a list of maps. Where maps are spread, each of their fields has a line of its own.
 */
export function fieldLines(key: string, value: Plain, spread = false): string[] {
  const name = scalar(key, 'flow');
  const children = isList(value) ? value : Object.values(value);
  const isNested = typeof value !== 'string' && children.some((child) => spread || !isTextOrTexts(child));
  if (isList(value) && value.some((item) => typeof item !== 'string'))
    return [`${name}:`, ...indented(value.flatMap((item) => itemLines(item, spread)))];
  if (isMap(value) && isNested) return [`${name}:`, ...indented(mapLines(value, spread))];
  return [`${name}: ${inline(value, 'block')}`];
}

/** `- value` as the lines of a block: a small map on one line, a larger or a spread one with a line for each field. */
export function itemLines(value: Plain, spread = false): string[] {
  const oneLine = `- ${inline(value, 'block')}`;
  if (!isMap(value) || Object.keys(value).length === 0) return [oneLine];
  if (!spread && Object.values(value).every(isTextOrTexts) && oneLine.length <= longestItem) return [oneLine];
  const [first = '', ...rest] = mapLines(value, spread);
  return [`- ${first}`, ...indented(rest)];
}

function mapLines(value: { readonly [key: string]: Plain }, spread: boolean): string[] {
  return Object.entries(value).flatMap(([key, inner]) => fieldLines(key, inner, spread));
}

function indented(lines: readonly string[]): string[] {
  return lines.map((line) => `  ${line}`);
}

function isTextOrTexts(value: Plain): boolean {
  return typeof value === 'string' || (isList(value) && value.every((item) => typeof item === 'string'));
}

/** Whether a value is a list; `Array.isArray` alone does not see that of a read-only one. */
export function isList(value: Plain): value is readonly Plain[] {
  return Array.isArray(value);
}

/** Whether a value is a map. */
export function isMap(value: Plain): value is { readonly [key: string]: Plain } {
  return typeof value === 'object' && !isList(value);
}

/** Begins with a letter, a digit or a sign before one; no colon before a space, no `#` after one. */
const plainText = /^(?:[\p{L}\p{N}]|[-+−.](?=\p{N}))(?:(?!: | #)[^\p{C}\p{Zl}\p{Zp}])*$/u;

function scalar(text: string, style: Style): string {
  const isPlain =
    plainText.test(text) && !/[\s:]$/.test(text) && !(style === 'flow' && /[,[\]{}]/.test(text));
  // Double quotes of YAML know every escape of JSON.
  return isPlain ? text : JSON.stringify(text);
}
