import * as z from 'zod';
import { limits } from '../source/limits.ts';

/** One item, or a list of at least so many of them and at most as many as any list may have; always a list once read. */
export function oneOrMany<Item extends z.ZodType>(item: Item, least = 0) {
  return z.preprocess(
    (written) => (written === undefined || Array.isArray(written) ? written : [written]),
    z.array(item).min(least).max(limits.items),
  );
}
