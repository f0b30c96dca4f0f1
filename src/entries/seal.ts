import { significant } from '../quantities/decimal.ts';
import { parseCount } from '../quantities/number.ts';
import { parseQuantity } from '../quantities/parse.ts';
import { type FlightField, flightFields } from './schema/flight-fields.ts';
import { nodeAt } from './source/locate.ts';
import type { SourceDocument, SourceNode } from './source/source.ts';

/** What a builder may still write after an acceptance: words about the flight, and taking it back. */
const notSealed: readonly string[] = ['changed', 'note', 'damage', 'withdrawn'];

type Canonical = string | number | readonly Canonical[] | { readonly [key: string]: Canonical };

/**
 * The flight as its seal sees it: the keys the builder wrote, sorted by code point at every level, quantities as SI numbers
 * to 12 significant digits, counts as numbers, everything else as the text written in Unicode form NFC, printed as
 * ECMAScript's JSON.stringify prints it, without white space. A value that is not what its field holds stays text. Null
 * where the source has no flight of that index in `flights`.
 */
export function canonicalFlight(source: SourceDocument, flightIndex: number): string | null {
  const flight = nodeAt(source, ['flights', flightIndex]);
  if (flight?.kind !== 'map') return null;
  return print(fieldsOf(flight, flightFields, notSealed));
}

type Fields = Readonly<Record<string, FlightField>>;

function fieldsOf(
  map: SourceNode & { readonly kind: 'map' },
  fields: Fields,
  left: readonly string[],
): Canonical {
  const written: Record<string, Canonical> = Object.create(null);
  for (const { key, value } of map.pairs) {
    if (left.includes(key.text)) continue;
    const field = Object.hasOwn(fields, key.text) ? fields[key.text] : undefined;
    written[key.text.normalize('NFC')] = canonical(value, field ?? 'text');
  }
  return written;
}

function canonical(node: SourceNode, field: FlightField): Canonical {
  if (node.kind === 'list') return node.items.map((item) => canonical(item, field));
  if (node.kind === 'map') return fieldsOf(node, typeof field === 'object' ? field : {}, []);
  return numberOf(node.text, field) ?? node.text.normalize('NFC');
}

function numberOf(text: string, field: FlightField): number | null {
  if (field === 'text' || typeof field === 'object') return null;
  if (field === 'count') {
    const count = parseCount(text);
    return count.ok ? count.value : null;
  }
  if (field === 'balance') return numberOf(text, 'length') ?? numberOf(text, 'share');
  const quantity = parseQuantity(text, field, { negative: true });
  return quantity.ok ? significant(quantity.value.value) : null;
}

function print(value: Canonical): string {
  if (typeof value === 'string' || typeof value === 'number') return JSON.stringify(value);
  if (isList(value)) return `[${value.map(print).join(',')}]`;
  const keys = Object.keys(value).sort(byCodePoint);
  return `{${keys.map((key) => `${JSON.stringify(key)}:${print(value[key] ?? '')}`).join(',')}}`;
}

function isList(value: Canonical): value is readonly Canonical[] {
  return Array.isArray(value);
}

/** UTF-16 order, which plain comparison gives, puts characters beyond U+FFFF before some that come earlier. */
function byCodePoint(a: string, b: string): number {
  const [left, right] = [[...a], [...b]];
  for (let at = 0; at < Math.min(left.length, right.length); at++) {
    const difference = (left[at]?.codePointAt(0) ?? 0) - (right[at]?.codePointAt(0) ?? 0);
    if (difference !== 0) return difference;
  }
  return left.length - right.length;
}
