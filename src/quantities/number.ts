import { numberFault, shown } from './fault.ts';
import type { Parsed } from './quantity.ts';
import { plainTypography } from './typography.ts';

/** A number at some place of a text. */
export interface ScannedNumber {
  readonly ok: true;
  readonly value: number;
  /** Of the last digit written: 0.01 for `3.20`, 1 for `3`, 1/8 for `3 1/8`. */
  readonly step: number;
  readonly form: 'whole' | 'decimal' | 'fraction';
  /** The digits with a decimal point, and the power of ten they are to be multiplied by; null for a fraction. */
  readonly decimal: { readonly digits: string; readonly power: number } | null;
  /** Where the text goes on. */
  readonly end: number;
}

export type NumberTrouble =
  | { readonly ok: false; readonly what: 'none' | 'malformed' | 'not-finite' | 'zero-denominator' }
  /** One or two ways to write it that would be accepted, from `start` to `end` of the text. */
  | {
      readonly ok: false;
      readonly what: 'ambiguous' | 'grouped';
      readonly readings: readonly string[];
      readonly start: number;
      readonly end: number;
    };

const aNumber =
  /([+-]?) ?(?:(\d+)(?: +|-)(\d+) ?\/ ?(\d+)|(\d+) ?\/ ?(\d+)|(\d*)(?:([.,])(\d+))?(?:[eE]([+-]?\d+))?)/y;
const grouped =
  /[1-9]\d{0,2}(?:(?:,\d{3})+(?:\.\d+)?|(?:\.\d{3})+(?:,\d+)?|(?: \d{3})+(?:[.,]\d+)?)(?![\d.,])/y;
const notFinite = /[+-]?\.?(?:nan|inf(?:inity)?|∞)(?![a-z])/iy;

/** Reads the number that begins at `start` of a text in plain typing. Takes time in proportion to its length. */
export function scanNumber(text: string, start: number): ScannedNumber | NumberTrouble {
  aNumber.lastIndex = start;
  const match = aNumber.exec(text);
  if (match === null) return { ok: false, what: 'none' };
  const end = aNumber.lastIndex;
  const [, sign, whole, over, under, above, below, digits = '', mark, places, power] = match;
  if (under !== undefined || below !== undefined) {
    return fraction(
      sign === '-',
      Number(whole ?? 0),
      Number(over ?? above),
      Number(under ?? below),
      text,
      end,
      whole !== undefined,
    );
  }
  if (digits === '' && places === undefined) {
    notFinite.lastIndex = start;
    return { ok: false, what: notFinite.test(text) ? 'not-finite' : 'none' };
  }
  const from = end - match[0].length + match[0].search(/[\d.,]/);
  const next = text.charCodeAt(end);
  const goesOn =
    next === 0x20 ? isDigit(text.charCodeAt(end + 1)) : isDigit(next) || next === 0x2c || next === 0x2e;
  if (
    goesOn ||
    (mark === ',' && places?.length === 3 && /^[1-9]\d{0,2}$/.test(digits) && power === undefined)
  ) {
    const readings = readingsAt(text, from);
    if (readings !== null) return readings;
    if (goesOn) return { ok: false, what: 'malformed' };
  }
  if (next === 0x5e || next === 0x2f) return { ok: false, what: 'malformed' };
  const plain = `${sign === '-' ? '-' : ''}${digits === '' ? '0' : digits}${places === undefined ? '' : `.${places}`}`;
  const exponent = power === undefined ? 0 : Number(power);
  const value = Number(power === undefined ? plain : `${plain}e${exponent}`);
  const vanishes = value === 0 && /[1-9]/.test(plain);
  if (!Number.isFinite(value) || vanishes) return { ok: false, what: 'not-finite' };
  return {
    ok: true,
    value: value + 0,
    step: Number(`1e${exponent - (places?.length ?? 0)}`),
    form: places === undefined && exponent === 0 ? 'whole' : 'decimal',
    decimal: { digits: plain, power: exponent },
    end,
  };
}

function fraction(
  negative: boolean,
  whole: number,
  over: number,
  under: number,
  text: string,
  end: number,
  mixed: boolean,
): ScannedNumber | NumberTrouble {
  if (under === 0) return { ok: false, what: 'zero-denominator' };
  if (/[\d./^,]/.test(text.charAt(end)) || (mixed && over >= under)) return { ok: false, what: 'malformed' };
  const value = whole + over / under;
  if (!Number.isFinite(value)) return { ok: false, what: 'not-finite' };
  return {
    ok: true,
    value: (negative ? -value : value) + 0,
    step: 1 / under,
    form: 'fraction',
    decimal: null,
    end,
  };
}

function isDigit(code: number): boolean {
  return code >= 0x30 && code <= 0x39;
}

/** What digits in groups of three may mean: `1,200` is 1.200 or 1200, `1,234.5` only 1234.5. */
function readingsAt(text: string, start: number): NumberTrouble | null {
  grouped.lastIndex = start;
  const match = grouped.exec(text);
  if (match === null) return null;
  const end = grouped.lastIndex;
  const marks = match[0].replace(/\d/g, '');
  if (marks === ',') {
    const readings = [match[0].replace(',', '.'), match[0].replace(',', '')];
    return { ok: false, what: 'ambiguous', readings, start, end };
  }
  const last = marks.at(-1) ?? '';
  const decimalMark =
    last !== ' ' && marks.indexOf(last) === marks.length - 1 && marks.length > 1 ? last : null;
  const [integer = '', places] = decimalMark === null ? [match[0]] : match[0].split(decimalMark);
  const ungrouped = integer.replace(/[., ]/g, '') + (places === undefined ? '' : `.${places}`);
  return { ok: false, what: 'grouped', readings: [ungrouped], start, end };
}

/**
 * A bare number such as `3.2`, `3,2`, `1/8` or `3 1/8`, with the step of its last digit; the step is null for a
 * fraction, which is a nominal size. Never NaN or infinite.
 */
export function parseNumber(text: string): Parsed<{ readonly value: number; readonly step: number | null }> {
  const plain = plainTypography(text.length > longestNumber ? '' : text);
  const scanned = scanNumber(plain, 0);
  if (!scanned.ok) return { ok: false, fault: numberFault(text, plain, scanned, 'number') };
  if (scanned.end < plain.length) {
    return { ok: false, fault: numberFault(text, plain, { ok: false, what: 'malformed' }, 'number') };
  }
  return {
    ok: true,
    value: { value: scanned.value, step: scanned.form === 'fraction' ? null : scanned.step },
  };
}

/** A whole number, zero or more, such as a number of strands. */
export function parseCount(text: string): Parsed<number> {
  const number = parseNumber(text);
  if (!number.ok) {
    const { code } = number.fault;
    const said = `"${shown(text)}" cannot be read as a whole number; write it like "2".`;
    const message = code === 'not-a-quantity' ? said : number.fault.message;
    return { ok: false, fault: { ...number.fault, message, accepted: wholeNumber } };
  }
  const { value } = number.value;
  if (Number.isSafeInteger(value) && value >= 0 && number.value.step === 1) return { ok: true, value };
  const found = shown(text);
  const message = `"${found}" is impossible here: a count is a whole number, zero or more, such as "2".`;
  return { ok: false, fault: { code: 'impossible-value', message, found, accepted: wholeNumber } };
}

const wholeNumber = 'a whole number, such as "2"';
/** Characters; longer texts are refused unread. */
export const longestNumber = 200;
