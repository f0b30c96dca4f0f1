import type { Quantity } from '../../quantities/quantity.ts';
import { fieldName } from '../problems/field-name.ts';
import { patternOf } from '../problems/issues-to-problems.ts';
import { problemAt } from '../problems/make-problem.ts';
import type { Problem } from '../problems/problem.ts';
import type { Path, SourceDocument } from '../source/source.ts';
import { otherUnit } from './other-unit.ts';
import { type PlausibleRange, plausibleRanges } from './plausible-ranges.ts';

/** Values far outside what such things measure: mostly a slip of the unit, which is then offered. */
export function checkImprobableValues(draft: object, source: SourceDocument): Problem[] {
  const problems: Problem[] = [];
  const visit = (value: unknown, path: Path): void => {
    if (typeof value !== 'object' || value === null) return;
    if (Array.isArray(value)) {
      value.forEach((item, index) => {
        visit(item, [...path, index]);
      });
    } else if (isQuantity(value)) {
      problems.push(...checkQuantity(source, value, path));
    } else {
      for (const [key, inner] of Object.entries(value)) visit(inner, [...path, key]);
    }
  };
  visit(draft, []);
  return problems;
}

function isQuantity(value: object): value is Quantity {
  return 'origin' in value && 'written' in value && 'u' in value;
}

function checkQuantity(source: SourceDocument, quantity: Quantity, path: Path): Problem[] {
  if (quantity.kind === 'share' && path.at(-1) === 'balance') return [];
  const range = plausibleRanges.get(patternOf(path[0] === 'setups' ? path.slice(1) : path));
  if (range === undefined || isIn(range, quantity.value)) return [];
  const suggestion = otherUnit(quantity, (value) => isIn(range, value));
  const question = suggestion === null ? ' Correct it if it is a slip.' : ` Did you mean "${suggestion}"?`;
  return [
    problemAt(source, path, 'value', 'improbable-value', {
      message: `${fieldName(source, path)} is "${quantity.written}", which is improbable: ${range.inWords}.${question}`,
      found: quantity.written,
      accepted: range.inWords,
      suggestion,
    }),
  ];
}

function isIn(range: PlausibleRange, value: number): boolean {
  return value >= range.low && value <= range.high;
}
