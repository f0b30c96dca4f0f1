import { formatMeasured } from '../../quantities/format.ts';
import type { Kind } from '../../quantities/quantity.ts';
import { type InBoth, inBoth } from '../measure.ts';
import { printed, withUnit } from '../number-text.ts';
import type { UnitPair } from '../units-shown.ts';

/** A value to the place to which its ± is told, without that: so that numbers of one account still add up. */
export function heldValue(value: number, u: number, kind: Kind, units: UnitPair): InBoth {
  return inBoth((system) => {
    const text = formatMeasured(value, u, kind, units[system]);
    return withUnit(text.value, printed(text.unit));
  });
}
