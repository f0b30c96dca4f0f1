import type { Kind, Origin, Quantity } from './quantity.ts';

function make(kind: Kind, value: number, u: number, origin: Origin): Quantity {
  if (!Number.isFinite(value) || !(u >= 0 && u < Infinity)) {
    throw new RangeError(`a ${kind} of ${value} with a standard uncertainty of ${u} cannot be reckoned with`);
  }
  return { kind, value, u, origin, written: '' };
}

/** A default, SI, with its own standard uncertainty. Throws RangeError for what is not finite. */
export function assumed(kind: Kind, value: number, u: number): Quantity {
  return make(kind, value, u, 'assumed');
}

/** A count or a convention, SI, without uncertainty. Throws RangeError for what is not finite. */
export function exact(kind: Kind, value: number): Quantity {
  return make(kind, value, 0, 'exact');
}

/** A measured value, SI, with its standard uncertainty. Throws RangeError for what is not finite. */
export function measured(kind: Kind, value: number, u: number): Quantity {
  return make(kind, value, u, 'measured');
}

/** The same number from another source; a new base input of the uncertainty propagation. */
export function withOrigin(quantity: Quantity, origin: Origin): Quantity {
  return { ...quantity, origin };
}
