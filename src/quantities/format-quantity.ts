import { demandFinite, inUnit } from './format.ts';
import { parseQuantity } from './parse.ts';
import type { Kind } from './quantity.ts';
import { type Unit, unitNamed } from './units.ts';

/**
 * An SI value as a person would write it, which `parseQuantity` reads back to the same number: the fewest digits of 12,
 * 15, 16 or 17 that do so (a number of more than 15 digits, which nobody wrote, comes back to 15 of them). A share above one is written in per cent, since a bare one would be refused. Throws
 * RangeError for an unknown unit or a value that is not finite.
 */
export function formatQuantity(value: number, kind: Kind, symbol: string): string {
  demandFinite(value);
  const named = unitNamed(kind, symbol);
  const unit = kind === 'share' && named.symbol === '1' && value > 1 ? unitNamed(kind, '%') : named;
  const direct = inUnit(value, unit);
  const spacing = Math.abs(direct) * Number.EPSILON;
  for (const digits of [12, 15, 16, 17]) {
    // A value that was read from a decimal lies within two spacings of it, whatever the factor's rounding.
    for (const nudge of [0, 0.5, -0.5, 1, -1, 2, -2]) {
      const text = withUnit(String(Number((direct + nudge * spacing).toPrecision(digits)) + 0), unit);
      if (readsAs(text, kind, value)) return text;
      if (digits < 16) break;
    }
  }
  return withUnit(String(direct + 0), unit);
}

function withUnit(number: string, unit: Unit): string {
  if (unit.symbol === '1') return number;
  return unit.symbol === '°' ? `${number}°` : `${number} ${unit.symbol}`;
}

function readsAs(text: string, kind: Kind, value: number): boolean {
  const parsed = parseQuantity(text, kind, { negative: true });
  return parsed.ok && parsed.value.value === value;
}
