import { exampleOf, exampleWithUncertainty, nounOf } from './accepted.ts';
import { faultOf, shown } from './fault.ts';
import { type Floor, floorOf, mayBeZero } from './floors.ts';
import { meantText } from './meant-text.ts';
import { longestNumber } from './number.ts';
import type { Fault, Kind, Parsed, Quantity } from './quantity.ts';
import { readMagnitude, type Subject } from './read-magnitude.ts';
import type { Reading, Unread } from './reading.ts';
import { plainTypography } from './typography.ts';

export interface ParseOptions {
  /** What the thing is measured with: the least uncertainty where none is stated. */
  readonly floor?: Floor;
  /** Whether a value below zero makes sense, as for a sweep or a drop. Numbers, angles and temperatures always may. */
  readonly negative?: boolean;
}

const signed: readonly Kind[] = ['number', 'angle', 'temperature'];
/** Rounding of °C and °F near absolute zero, K. */
const nearZero = 1e-9;
const rectangle = Math.sqrt(12);

/**
 * Reads a quantity as people write it, in SI, with its standard uncertainty: the one stated behind `±`, else the larger
 * of the written resolution / √12 (rectangular distribution, JCGM 100:2008, 4.3.7) and the floor. A fraction, a nominal
 * size, takes the floor alone where there is one. A share about the balance gets no floor here: 2 mm of what chord is
 * not known yet. Never guesses, never gives NaN; a text that cannot be read gives a fault.
 */
export function parseQuantity(text: string, kind: Kind, options: ParseOptions = {}): Parsed<Quantity> {
  const result = read(text, kind, options);
  if ('written' in result) return { ok: true, value: result };
  const meant = text.length > longestNumber ? undefined : meantText(plainTypography(text), kind);
  const suggestion = result.fault.suggestion ?? meant;
  const fault = suggestion === undefined ? result.fault : { ...result.fault, suggestion };
  return { ok: false, fault: withSuggestion(fault, kind, options) };
}

/** A suggestion is offered only where it would be accepted, and then the message offers it too. */
function withSuggestion(fault: Fault, kind: Kind, options: ParseOptions): Fault {
  const { suggestion, ...rest } = fault;
  if (suggestion === undefined || !('written' in read(suggestion, kind, options))) return rest;
  if (fault.message.includes(`"${suggestion}"`)) return fault;
  return { ...fault, message: `${fault.message} Did you mean "${suggestion}"?` };
}

function read(text: string, kind: Kind, options: ParseOptions): Quantity | Unread {
  if (text.length > longestNumber) {
    const message = `"${shown(text)}" is too long for ${nounOf(kind)}; write it like "${exampleOf(kind)}".`;
    return { ok: false, fault: faultOf('not-a-quantity', text, kind, message) };
  }
  const plain = plainTypography(text);
  const subject: Subject = { text, kind, difference: false };
  const sign = plain.indexOf('±');
  if (sign < 0) {
    const reading = readMagnitude(plain, subject);
    if (!reading.ok) return reading;
    return finished(reading, unstated(reading, kind, options.floor), subject, options);
  }
  const [front, back] = [plain.slice(0, sign).trim(), plain.slice(sign + 1).trim()];
  const reading = readStatedValue(front, back, subject);
  if (!reading.ok) return reading;
  const u = readUncertainty(reading, front, back, subject);
  return u.ok ? finished(reading, u.value, subject, options) : u;
}

/** The value in front of `±`; in `3.20 ± 0.01 m` the unit stands at the end, for both. */
function readStatedValue(front: string, back: string, subject: Subject): Reading | Unread {
  const reading = readMagnitude(front, subject);
  if (reading.ok || reading.fault.code !== 'missing-unit') return reading;
  if (back.endsWith('%')) {
    const suggestion = subject.kind === 'share' ? `${front} % ± ${back}` : undefined;
    return { ok: false, fault: { ...reading.fault, suggestion } };
  }
  const unit = /[^\d.,/ ].*$/.exec(back)?.[0] ?? '';
  const withUnit = unit === '' ? reading : readMagnitude(`${front} ${unit}`, subject);
  return withUnit.ok ? withUnit : reading;
}

function readUncertainty(
  value: Reading,
  front: string,
  back: string,
  subject: Subject,
): { readonly ok: true; readonly value: number } | Unread {
  const percent = /^(.*?) ?%$/.exec(back);
  // The ± of a share is in points; so is that of a number written in per cent.
  const points = subject.kind === 'share' || (subject.kind === 'number' && front.endsWith('%'));
  if (percent !== null && !points) {
    const share = readMagnitude(percent[1] ?? '', { ...subject, kind: 'number' });
    if (!share.ok) return inContext(share, subject);
    if (subject.kind === 'temperature') {
      const message = `"${shown(subject.text)}" gives the uncertainty of a temperature in per cent, which means nothing; write it in degrees, such as "14 °C ± 1 °C".`;
      return { ok: false, fault: faultOf('wrong-kind-of-unit', subject.text, subject.kind, message) };
    }
    return stated(share.value * 0.01 * Math.abs(value.value), share.value, subject);
  }
  const reading = readMagnitude(back, { ...subject, difference: true });
  if (!reading.ok) return inContext(reading, subject);
  if (points && !reading.hasUnit && value.hasUnit) {
    const message = `"${shown(subject.text)}" has no unit behind the uncertainty; write it like "${exampleWithUncertainty(subject.kind)}".`;
    const suggestion = `${front} ± ${back} %`;
    return { ok: false, fault: faultOf('missing-unit', subject.text, subject.kind, message, suggestion) };
  }
  return stated(reading.value, reading.value, subject);
}

/** What is wrong with the part behind `±`, said of the whole text; a suggestion about the part is none about the whole. */
function inContext(unread: Unread, subject: Subject): Unread {
  const { text, kind } = subject;
  const { code, message } = unread.fault;
  const example = exampleWithUncertainty(kind);
  const said =
    code === 'missing-unit'
      ? `"${shown(text)}" has no unit behind the uncertainty; write it like "${example}".`
      : code === 'wrong-kind-of-unit' || code === 'unknown-unit'
        ? `"${shown(text)}" has an uncertainty that is not ${nounOf(kind)}; write it like "${example}".`
        : code === 'not-a-quantity'
          ? `"${shown(text)}" has an uncertainty that cannot be read; write it like "${example}".`
          : message;
  return { ok: false, fault: faultOf(code, text, kind, said) };
}

function stated(
  u: number,
  written: number,
  subject: Subject,
): { readonly ok: true; readonly value: number } | Unread {
  if (written >= 0) return { ok: true, value: u };
  const message = `"${shown(subject.text)}" is impossible: an uncertainty cannot be negative.`;
  return { ok: false, fault: faultOf('impossible-value', subject.text, subject.kind, message) };
}

function unstated(reading: Reading, kind: Kind, floor: Floor | undefined): number {
  const written = reading.resolution / rectangle;
  if (floor === undefined || (floor === 'balance' && kind === 'share')) return written;
  const least = floorOf(floor, reading.value, reading.resolution);
  return reading.nominal ? least : Math.max(written, least);
}

function finished(reading: Reading, u: number, subject: Subject, options: ParseOptions): Quantity | Unread {
  const { text, kind } = subject;
  const impossible = (why: string): Unread => ({
    ok: false,
    fault: faultOf('impossible-value', text, kind, `"${shown(text)}" is impossible: ${why}.`),
  });
  let { value } = reading;
  if (!Number.isFinite(value) || !Number.isFinite(u))
    return impossible('it is not a number that can be reckoned with');
  if (kind === 'temperature' && value < 0) {
    if (value < -nearZero) return impossible('nothing is colder than absolute zero, -273.15 °C');
    value = 0;
  }
  const mayBeNegative = options.negative ?? (signed.includes(kind) || options.floor === 'balance');
  if (value < 0 && !mayBeNegative) return impossible(`${nounOf(kind)} cannot be negative here`);
  if (value === 0 && !mayBeZero(options.floor)) return impossible(`${nounOf(kind)} is above zero here`);
  return { kind, value, u, origin: 'measured', written: text.trim() };
}

export type { Floor };
