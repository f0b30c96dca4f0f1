import type { Limit } from '../../model/challenge.ts';
import { exampleOf, unitsInWords } from '../../quantities/accepted.ts';
import { type ParseOptions, parseQuantity } from '../../quantities/parse.ts';
import type { Fault, Kind, Parsed } from '../../quantities/quantity.ts';

/** Two numbers closer than this share of their size are the same: what floating point may have added. */
const slack = 1e-9;

type End = 'low' | 'high';
const openings: readonly { readonly words: string; readonly end: End; readonly included: boolean }[] = [
  { words: 'at least', end: 'low', included: true },
  { words: 'at most', end: 'high', included: true },
  { words: 'more than', end: 'low', included: false },
  { words: 'less than', end: 'high', included: false },
];

/** The words with which a limit on one side begins. */
export const limitOpenings: readonly string[] = openings.map(({ words }) => words);

/** Ways of writing a limit that are not accepted but plainly mean one of those that are. */
const otherWays: readonly { readonly pattern: RegExp; readonly words: string }[] = [
  { pattern: /^(?:>=|≥|min(?:imum)?\.?|not less than|no less than|from)\s*/i, words: 'at least' },
  { pattern: /^(?:<=|≤|max(?:imum)?\.?|not more than|no more than|up to)\s*/i, words: 'at most' },
  { pattern: /^(?:>|over|above)\s*/i, words: 'more than' },
  { pattern: /^(?:<|under|below)\s*/i, words: 'less than' },
];

/**
 * Reads a limit: "at least X", "at most X", "X to Y" (ends included), "more than X", "less than X" (ends left out). A
 * range may state its unit once. The ends are in the SI unit of the kind; a bare number is accepted where the kind has
 * no unit. A limit carries no uncertainty.
 */
export function parseLimit(sentence: string, kind: Kind, options: ParseOptions = {}): Parsed<Limit> {
  const written = sentence.trim().replace(/\s+/g, ' ');
  if (/±|\+\/-/.test(written))
    return refuse('not-a-quantity', written, kind, 'A limit is exact; write it without ±.');
  for (const { words, end, included } of openings) {
    if (!written.toLowerCase().startsWith(`${words} `)) continue;
    const value = written.slice(words.length + 1);
    const read = parseQuantity(value, kind, options);
    if (!read.ok) {
      const both = parseLimit(value, kind, options);
      if (both.ok)
        return refuse(
          'not-a-quantity',
          written,
          kind,
          `"${written}" says "${words}" and a range. Write one of the two.`,
          value,
        );
      return refused(read.fault, kind, (suggestion) => `${words} ${suggestion}`);
    }
    const bound = { value: read.value.value, included };
    return {
      ok: true,
      value: { low: end === 'low' ? bound : null, high: end === 'high' ? bound : null, written },
    };
  }
  const range = /^(.+?)\s+to\s+(.+)$/i.exec(written);
  if (range?.[1] !== undefined && range[2] !== undefined && !/^up$/i.test(range[1]))
    return parseRange(range[1], range[2], kind, options, written);
  return refuse(
    'not-a-quantity',
    written,
    kind,
    `"${written}" is not a limit. Write "at least", "at most", "more than" or "less than" before the value, or two values with "to" between them.`,
    otherWay(written, kind),
  );
}

/** True where a value in SI lies within the limit; an end that is left out does not hold for itself. */
export function holds(limit: Limit, value: number): boolean {
  const { low, high } = limit;
  if (low !== null && !(same(value, low.value) ? low.included : value > low.value)) return false;
  return !(high !== null && !(same(value, high.value) ? high.included : value < high.value));
}

function same(a: number, b: number): boolean {
  return Math.abs(a - b) <= slack * Math.max(Math.abs(a), Math.abs(b));
}

function parseRange(
  from: string,
  to: string,
  kind: Kind,
  options: ParseOptions,
  written: string,
): Parsed<Limit> {
  const high = parseQuantity(to, kind, options);
  if (!high.ok) return refused(high.fault, kind, (suggestion) => `${from} to ${suggestion}`);
  const low = parseQuantity(withUnitOf(to, from), kind, options);
  if (!low.ok) return refused(low.fault, kind, (suggestion) => `${suggestion} to ${to}`);
  if (low.value.value > high.value.value)
    return refuse(
      'impossible-value',
      written,
      kind,
      `The range "${written}" ends below its beginning. Write the smaller value first.`,
      `${to} to ${withUnitOf(to, from)}`,
    );
  return {
    ok: true,
    value: {
      low: { value: low.value.value, included: true },
      high: { value: high.value.value, included: true },
      written,
    },
  };
}

/** "17" before "19 dm2" is "17 dm2"; a text that has a unit, or is more than one number, stays as it is. */
function withUnitOf(other: string, text: string): string {
  if (!/^[-−+]?\d[\d.,/ -]*$/.test(text)) return text;
  const unit = /^[-−+]?\d[\d.,/ -]*([^\d].*)$/.exec(other)?.[1]?.trim() ?? '';
  // A unit may hold a power (dm2, m^2) but no second number: a compound or a product is no unit.
  return unit === '' || /\d\s*\D*\d|(?:^|\s)[\d.,]+|^[x×:]/.test(unit) ? text : `${text} ${unit}`;
}

function otherWay(written: string, kind: Kind): string | undefined {
  for (const { pattern, words } of otherWays) {
    const rest = written.replace(pattern, '');
    if (rest !== written && parseQuantity(rest, kind).ok) return `${words} ${rest}`;
  }
  const dash = /^(\S.*?)\s*[–—-]\s*(\S.*)$/.exec(written);
  if (dash?.[1] === undefined || dash[2] === undefined) return undefined;
  return parseLimit(`${dash[1]} to ${dash[2]}`, kind).ok ? `${dash[1]} to ${dash[2]}` : undefined;
}

/** The fault of one end; what it suggests becomes a suggestion for the whole sentence. */
function refused(fault: Fault, kind: Kind, sentenceWith: (suggestion: string) => string): Parsed<Limit> {
  const { suggestion, ...rest } = fault;
  const accepted = acceptedLimits(kind);
  return {
    ok: false,
    fault: {
      ...rest,
      accepted,
      ...(suggestion === undefined ? {} : { suggestion: sentenceWith(suggestion) }),
    },
  };
}

/** Every form of a limit on a kind, with the units its values may have. */
function acceptedLimits(kind: Kind): string {
  const example = exampleOf(kind);
  const forms = openings.map(({ words }) => `"${words} ${example}"`).join(', ');
  const units = unitsInWords(kind);
  return `${forms}, or two values with "to" between them${units === '' ? '' : `, in ${units}`}`;
}

function refuse(
  code: Fault['code'],
  found: string,
  kind: Kind,
  message: string,
  suggestion?: string,
): { readonly ok: false; readonly fault: Fault } {
  const accepted = acceptedLimits(kind);
  return {
    ok: false,
    fault: { code, message, found, accepted, ...(suggestion === undefined ? {} : { suggestion }) },
  };
}
