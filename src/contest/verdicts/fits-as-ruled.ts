import type { RuledValue } from '../../model/ruling.ts';

/** Figures within this share of each other are the same to a ruling. */
const tolerance = 0.001;
/** What floating point may add to a difference of exactly that share. */
const slack = 1e-12;

/** True where a fact or figure is still what was ruled on: figures within 0.1 %, lists item by item, facts exactly. */
export function fitsAsRuled(ruled: RuledValue, now: RuledValue | null): boolean {
  if (now === null) return false;
  if (typeof ruled === 'number' || isNumbers(ruled)) {
    if (typeof now !== 'number' && !isNumbers(now)) return false;
    const [before, after] = [[ruled].flat() as number[], [now].flat() as number[]];
    return (
      before.length === after.length &&
      before.every((value, index) => close(value, after[index] ?? Number.NaN))
    );
  }
  if (Array.isArray(ruled) && Array.isArray(now))
    return [...ruled].map(String).sort().join('\n') === [...now].map(String).sort().join('\n');
  return ruled === now;
}

function isNumbers(value: RuledValue): value is readonly number[] {
  return Array.isArray(value) && value.length > 0 && value.every((item) => typeof item === 'number');
}

function close(a: number, b: number): boolean {
  return Math.abs(a - b) <= (tolerance + slack) * Math.max(Math.abs(a), Math.abs(b));
}
