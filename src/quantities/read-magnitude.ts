import { exampleOf, nounOf, unitsInWords } from './accepted.ts';
import { readClockTime } from './clock-time.ts';
import { mayFollow } from './compound.ts';
import { faultOf, numberFault, shown } from './fault.ts';
import { nearestUnit, unitCarriedOn } from './nearest-unit.ts';
import { type NumberTrouble, type ScannedNumber, scanNumber } from './number.ts';
import type { Fault, Kind } from './quantity.ts';
import type { Reading, Unread } from './reading.ts';
import { findUnit, inch, kindsWith, type Unit } from './units.ts';

/** What is being read: the whole text as written, and the kind that is wanted. */
export interface Subject {
  readonly text: string;
  readonly kind: Kind;
  /** A difference of two such quantities: an uncertainty of 1 °C is 1 K. */
  readonly difference: boolean;
}

const compounding: readonly Kind[] = ['length', 'mass', 'force', 'time'];
const times = / ?[x×*] ?/iy;

/** Reads a number with its unit, a compound such as `10 ft 6 in`, `2:05.4` or `54 x 10`, from a text in plain typing. */
export function readMagnitude(plain: string, subject: Subject): Reading | Unread {
  if (subject.kind === 'time' && plain.includes(':')) return readClockTime(subject.text, plain);
  if (subject.kind === 'turns' && /[x×*]/i.test(plain)) return readCranks(plain, subject);
  const first = scanNumber(plain, 0);
  if (!first.ok)
    return unread(withoutNumber(plain, subject) ?? numberFault(subject.text, plain, first, subject.kind));
  const rest = plain.slice(first.end);
  const unit = findUnit(subject.kind, rest);
  if (unit !== null) return readSingle(first, unit, rest, subject);
  const isOfAnotherKind = kindsWith(rest).length > 0;
  if (compounding.includes(subject.kind) && /\d/.test(rest) && !isOfAnotherKind) {
    const compound = readCompound(plain, first, subject);
    if (compound !== null) return compound;
  }
  return unread(unitFault(plain, first, rest, subject));
}

function unread(fault: Fault): Unread {
  return { ok: false, fault };
}

function readSingle(number: ScannedNumber, unit: Unit, rest: string, subject: Subject): Reading | Unread {
  const hasUnit = rest.trim() !== '';
  if (unit.kind === 'share' && !hasUnit && number.value > 1) {
    const percent = `${subject.text.trim()} %`;
    const message = `"${shown(subject.text)}" is a share above one, so a unit may be missing; write a share like "38 %" or "0.38".`;
    return unread(faultOf('missing-unit', subject.text, 'share', message, percent));
  }
  const value = inSi(number, unit, subject.difference ? 0 : (unit.offset ?? 0));
  return {
    ok: true,
    value,
    resolution: resolutionOf(number, unit),
    nominal: number.form === 'fraction',
    hasUnit,
  };
}

/**
 * Decimals times a power of ten are shifted as text, and other products are cleaned: 320 cm and 3.20 m are the same
 * number, and so are 6 in and 15.24 cm. Degrees are left alone: their factor is no decimal.
 */
function inSi(number: ScannedNumber, unit: Unit, offset: number): number {
  if (unit.decimalShift !== null && number.decimal !== null) {
    const power = number.decimal.power + unit.decimalShift;
    return power === 0 ? Number(number.decimal.digits) + 0 : Number(`${number.decimal.digits}e${power}`) + 0;
  }
  const value = number.value * unit.factor + offset;
  return unit.kind === 'angle' ? value : cleaned(value);
}

/** Whole feet or yards are read to an inch; all else to the last digit written. */
function resolutionOf(number: ScannedNumber, unit: Unit): number {
  const inFeet = unit.symbol === 'ft' || unit.symbol === 'yd';
  return inFeet && number.form === 'whole' ? inch : number.step * unit.factor;
}

/** Turns of the winder's crank × its ratio. */
function readCranks(plain: string, subject: Subject): Reading | Unread {
  const fail = (trouble: NumberTrouble) => unread(numberFault(subject.text, plain, trouble, 'turns'));
  const cranks = scanNumber(plain, 0);
  if (!cranks.ok) return fail(cranks);
  times.lastIndex = cranks.end;
  if (!times.test(plain)) return fail({ ok: false, what: 'malformed' });
  const ratio = scanNumber(plain, times.lastIndex);
  if (!ratio.ok) return fail(ratio);
  const after = plain.slice(ratio.end);
  if (findUnit('turns', after) === null) return fail({ ok: false, what: 'malformed' });
  return {
    ok: true,
    value: cleaned(cranks.value * ratio.value),
    resolution: cranks.step * Math.abs(ratio.value),
    nominal: false,
    hasUnit: after !== '',
  };
}

/** `10 ft 6 in`: null where the text is no compound of known units at all. */
function readCompound(plain: string, first: ScannedNumber, subject: Subject): Reading | Unread | null {
  const parts: { readonly number: ScannedNumber; readonly unit: Unit }[] = [];
  let number = first;
  for (;;) {
    const unitEnd = nextDigit(plain, number.end);
    const between = plain.slice(number.end, unitEnd);
    const atEnd = unitEnd === plain.length;
    // A hyphen may join 10'-6"; a point or a minus before a digit belongs to the number, and is no separator.
    if (!atEnd && /(?: -|[.+])$/.test(between)) return null;
    const unit = findUnit(subject.kind, atEnd ? between : between.replace(/[ ,-]+$/, ''));
    if (unit === null) return parts.length > 0 ? unread(partFault(plain, number, between, subject)) : null;
    parts.push({ number, unit });
    if (atEnd) break;
    const next = scanNumber(plain, unitEnd);
    if (!next.ok) return unread(numberFault(subject.text, plain, next, subject.kind));
    number = next;
  }
  return sumOf(parts, subject);
}

function nextDigit(text: string, start: number): number {
  for (let index = start; index < text.length; index++) {
    const code = text.charCodeAt(index);
    if (code >= 0x30 && code <= 0x39) return index;
  }
  return text.length;
}

function sumOf(
  parts: readonly { readonly number: ScannedNumber; readonly unit: Unit }[],
  subject: Subject,
): Reading | Unread {
  let value = 0;
  for (const [index, { number, unit }] of parts.entries()) {
    const before = parts[index - 1];
    const fits =
      before === undefined || (mayFollow(before.unit, unit, number.value) && before.number.form === 'whole');
    if (!fits) {
      const message = `"${shown(subject.text)}" cannot be read as ${nounOf(subject.kind)}: in a compound whole numbers come first, and each part is smaller than one of the unit before it, as in "${compoundExample(subject.kind)}".`;
      return unread(faultOf('not-a-quantity', subject.text, subject.kind, message));
    }
    value += Math.abs(inSi(number, unit, 0));
  }
  const [head, tail] = [parts[0], parts.at(-1)];
  if (head === undefined || tail === undefined) throw new RangeError('a compound without parts');
  // A leading minus is that of the whole.
  const negative = head.number.decimal?.digits.startsWith('-') ?? head.number.value < 0;
  return {
    ok: true,
    value: cleaned(negative ? -value : value),
    resolution: resolutionOf(tail.number, tail.unit),
    nominal: tail.number.form === 'fraction',
    hasUnit: true,
  };
}

function compoundExample(kind: Kind): string {
  return kind === 'length' ? '10 ft 6 in' : kind === 'time' ? '1 min 2.4 s' : '2 lb 3 oz';
}

/** To 15 significant digits: without the last bits of a sum or a product of decimals, so that 60 + 2.4 is 62.4. */
function cleaned(value: number): number {
  return Number(value.toPrecision(15)) + 0;
}

function withoutNumber(plain: string, subject: Subject): Fault | null {
  if (plain === '' || findUnit(subject.kind, plain) === null) return null;
  const message = `"${shown(subject.text)}" is a unit without a number; write ${nounOf(subject.kind)} like "${exampleOf(subject.kind)}".`;
  return faultOf('not-a-quantity', subject.text, subject.kind, message);
}

function partFault(plain: string, number: ScannedNumber, between: string, subject: Subject): Fault {
  if (between.trim() !== '') return unitFault(plain, number, between, subject);
  const message = `"${shown(subject.text)}" ends in a number without a unit; write one of ${unitsInWords(subject.kind)} behind it.`;
  return faultOf('missing-unit', subject.text, subject.kind, message);
}

/** Why what follows a number is no unit of the kind. */
function unitFault(plain: string, number: ScannedNumber, rest: string, subject: Subject): Fault {
  const { text, kind } = subject;
  const quoted = `"${shown(text)}"`;
  const unit = rest.trim();
  if (unit === '') {
    const message = `${quoted} has no unit; write one of ${unitsInWords(kind)} behind the number, such as "${exampleOf(kind)}".`;
    return faultOf('missing-unit', text, kind, message);
  }
  if (/[\d:;,!?=()[\]]/.test(unit.replace(/(?<=[a-zA-Z])\^?[23](?!\d)/g, '')) || unit.length > 30) {
    return numberFault(text, plain, { ok: false, what: 'malformed' }, kind);
  }
  const withUnit = (offered: Unit | null) =>
    offered === null ? undefined : replaced(plain, number.end, rest, offered.symbol);
  const ends =
    kind === 'turns' || kind === 'number'
      ? `${nounOf(kind)} is written bare, such as "${exampleOf(kind)}".`
      : `${nounOf(kind)} is written in ${unitsInWords(kind)}.`;
  const others = kindsWith(unit).filter((other) => other !== kind);
  const [other] = others;
  if (other !== undefined) {
    const message = `${quoted} is ${nounOf(other)}, but ${ends}`;
    return faultOf('wrong-kind-of-unit', text, kind, message, withUnit(unitCarriedOn(kind, unit)));
  }
  const message = `${quoted} has a unit that is not known, "${shown(unit)}": ${ends}`;
  return faultOf('unknown-unit', text, kind, message, withUnit(nearestUnit(kind, unit)));
}

function replaced(plain: string, end: number, rest: string, symbol: string): string {
  const space = symbol === '°' ? '' : ' ';
  return `${plain.slice(0, end).trimEnd()}${space}${symbol}${plain.slice(end + rest.length)}`;
}
