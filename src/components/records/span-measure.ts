import { significant } from '../../quantities/decimal.ts';
import { type Measure, measureOf } from '../measure.ts';
import { unitPairs } from '../units-shown.ts';

/** Digits of a span whose uncertainty nobody can tell any more. */
const digits = 4;

/** A span as text in both systems, with its ± where that is known. */
export function spanMeasure({ value, u }: { readonly value: number; readonly u: number | null }): Measure {
  return u === null
    ? measureOf(significant(value, digits), 0, 'length', unitPairs.span)
    : measureOf(value, u, 'length', unitPairs.span);
}
