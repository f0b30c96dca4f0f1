import * as z from 'zod';

/** A map of which every key is known. Unknown keys are reported, each at its own place. */
export function fields<Shape extends z.core.$ZodLooseShape>(shape: Shape) {
  return z.strictObject(shape);
}
