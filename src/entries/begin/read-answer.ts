import type { Shape } from '../describe/field.ts';
import { toPlain } from '../source/locate.ts';
import { readSource } from '../source/read-source.ts';
import type { Plain } from '../source/source.ts';
import { splitPlain } from '../source/split-plain.ts';

/**
 * What was typed for a field, as its file would say it: in brackets or braces where the field takes several values, in double
 * quotes, or plain; a list also with commas between its items. Whether it is accepted is for the field's reader to say.
 */
export function readAnswer(shape: Shape, typed: string): Plain {
  const text = typed.trim();
  const inBrackets = /^[[{]/.test(text) && takesSeveral(shape);
  const read = inBrackets || /^".*"$/.test(text) ? asWritten(text) : null;
  if (read !== null) return read;
  if (shape.kind !== 'list' || takesMapsOnly(shape.of)) return text;
  const items = text.split(betweenItems).filter((item) => item !== '');
  return shape.orOne && items.length < 2 ? text : items;
}

/** A comma with a space after it, or one that is neither a decimal comma nor inside an address. */
const betweenItems = /,\s+|(?<!\d),(?=\d)|(?<!:\/\/\S*),(?!\d)|,(?=https?:\/\/)/;

function takesSeveral(shape: Shape): boolean {
  if (shape.kind === 'either') return shape.shapes.some(takesSeveral);
  return shape.kind === 'map' || shape.kind === 'list';
}

function takesMapsOnly(shape: Shape): boolean {
  return shape.kind === 'map' || (shape.kind === 'either' && shape.shapes.every(takesMapsOnly));
}

/** The value as YAML reads it; null where it cannot be read, or would be more than a value. */
function asWritten(text: string): Plain | null {
  if (/[\r\n]/.test(text)) return null;
  const { source, problems } = readSource('', `---\nvalue: ${text}\n---\n`, splitPlain);
  const [pair, more] = source?.root.pairs ?? [];
  if (source === null || problems.length > 0 || pair === undefined || more !== undefined) return null;
  return toPlain(pair.value);
}
