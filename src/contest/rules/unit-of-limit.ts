import type { Limit } from '../../model/challenge.ts';
import type { Kind } from '../../quantities/quantity.ts';
import { findUnit, siUnit, type Unit } from '../../quantities/units.ts';

/** The unit that follows a number of the limit: a range may state it behind its second number only. */
export function unitOfLimit(limit: Limit, kind: Kind): Unit {
  for (const { index } of limit.written.matchAll(/\d(?=\s*[^\d\s])/g)) {
    const unit = findUnit(kind, limit.written.slice(index + 1).trim());
    if (unit !== null) return unit;
  }
  return siUnit(kind);
}
