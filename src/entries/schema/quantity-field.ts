import type * as z from 'zod';
import { parseCount, parseNumber } from '../../quantities/number.ts';
import { type ParseOptions, parseQuantity } from '../../quantities/parse.ts';
import type { Kind, Quantity } from '../../quantities/quantity.ts';
import { leaf, type Reading, refused, taken } from './leaf.ts';

/** A number with its unit, in SI once read. */
export function quantity(kind: Kind, options: ParseOptions = {}) {
  const form = { kind: 'quantity', of: kind, negative: options.negative === true } as const;
  return leaf(form, (text): Reading<Quantity> => {
    const clock = kind === 'time' ? asClock(text) : null;
    const reading = parseQuantity(text, kind, options);
    if (clock === null || reading.ok) return reading;
    const message = `"${text}" has no unit. Write "${text} s" for seconds, or "${clock}" for minutes and seconds.`;
    return { ok: false, fault: { ...reading.fault, message } };
  });
}

/** A bare `1.05` as minutes and seconds, `1:05`; null where it cannot be that. */
function asClock(text: string): string | null {
  const match = /^([1-9]\d?)[.,]([0-5]\d)$/.exec(text.trim());
  return match === null ? null : `${match[1]}:${match[2]}`;
}

/** The balance: a length behind the leading edge, or a share of the mean aerodynamic chord; either may be negative. */
export const balance = (): z.ZodType<Quantity> =>
  leaf({ kind: 'balance' }, (text): Reading<Quantity> => {
    if (text.split(/±|\+\/-/)[0]?.includes('%') === true)
      return parseQuantity(text, 'share', { negative: true });
    if (!/[a-z"'″′]/i.test(text) && /\d/.test(text))
      return refused(
        'missing-unit',
        `"${text}" has no unit.`,
        text,
        'a length, such as 104 mm, or a share of the mean aerodynamic chord, such as 38 %',
      );
    return parseQuantity(text, 'length', { floor: 'balance', negative: true });
  });

/** A whole number of at least `least`, without a unit. */
export function count(least = 0) {
  return leaf({ kind: 'count', least }, (text): Reading<number> => {
    const parsed = parseCount(text);
    if (!parsed.ok || parsed.value >= least) return parsed;
    return refused('impossible-value', `"${text}" is too few.`, text, `a whole number of at least ${least}`);
  });
}

/** A plain number, without a unit; may be negative. */
export function plainNumber() {
  return leaf({ kind: 'number' }, (text): Reading<number> => {
    const parsed = parseNumber(text);
    return parsed.ok ? taken(parsed.value.value) : parsed;
  });
}
