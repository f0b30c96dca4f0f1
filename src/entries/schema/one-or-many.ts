import * as z from 'zod';

/** One item, or a list of at least so many of them; always a list once read. */
export function oneOrMany<Item extends z.ZodType>(item: Item, least = 0) {
  return z.preprocess(
    (written) => (written === undefined || Array.isArray(written) ? written : [written]),
    z.array(item).min(least),
  );
}
