import * as z from 'zod';

/** One item, or a list of them; always a list once read. */
export function oneOrMany<Item extends z.ZodType>(item: Item) {
  return z.preprocess(
    (written) => (written === undefined || Array.isArray(written) ? written : [written]),
    z.array(item),
  );
}
