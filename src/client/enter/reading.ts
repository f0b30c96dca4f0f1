import * as z from 'zod';
import type { InBoth } from '../../components/measure.ts';
import { measureOfQuantity } from '../../components/quantity-text.ts';
import { type UnitPair, unitPairs, unitsOfKind } from '../../components/units-shown.ts';
import { entry } from '../../entries/schema/entry.ts';
import { readersAt } from '../../entries/schema/field-at.ts';
import type { Path } from '../../entries/source/source.ts';
import type { Quantity } from '../../quantities/quantity.ts';

/** What was understood of a text in a field, in both systems of units with its ±; null where it is no quantity. */
export function reading(path: Path, written: string): InBoth | null {
  if (written === '') return null;
  for (const schema of readersAt(entry, path)) {
    const read = z.safeParse(schema, written);
    if (!read.success || !isQuantity(read.data)) continue;
    const { metric, imperial } = measureOfQuantity(read.data, unitsFor(read.data));
    return { metric, imperial };
  }
  return null;
}

/** Lengths of a metre and more as spans are told, else as sizes. */
function unitsFor({ kind, value }: Quantity): UnitPair {
  return kind === 'length' && Math.abs(value) >= 1 ? unitPairs.span : unitsOfKind(kind);
}

function isQuantity(value: unknown): value is Quantity {
  return typeof value === 'object' && value !== null && 'kind' in value && 'u' in value;
}
