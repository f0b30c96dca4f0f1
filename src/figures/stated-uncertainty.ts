import type { Quantity } from '../quantities/quantity.ts';

/** True where the builder wrote the ± of a quantity. */
export function statesUncertainty({ written }: Quantity): boolean {
  return /±|\+\s*\/?\s*-/.test(written);
}
