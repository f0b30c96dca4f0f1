import * as z from 'zod';
import type { Kind } from '../../quantities/quantity.ts';

/** What kind of text stands in a field that holds one text: what a form asks for, a table of fields says, an editor checks. */
export type TextForm =
  | { readonly kind: 'quantity'; readonly of: Kind; readonly negative: boolean; readonly bareZero?: true }
  /** A length behind the leading edge, or a share of the mean aerodynamic chord. */
  | { readonly kind: 'balance' }
  | { readonly kind: 'count'; readonly least: number }
  | { readonly kind: 'number' }
  | { readonly kind: 'text'; readonly longest: number }
  | { readonly kind: 'word'; readonly words: readonly string[] }
  | { readonly kind: 'yes-no' }
  /** A calendar date; with, where it may be, the time of day and its offset; or a month alone. */
  | { readonly kind: 'date'; readonly precision: 'day' | 'moment' | 'month' }
  /** Texts of one fixed shape. */
  | { readonly kind: FixedForm };

export type FixedForm =
  | 'allowance'
  | 'colour'
  | 'entry-address'
  | 'figure'
  | 'file-name'
  | 'format-number'
  | 'limit'
  | 'link'
  | 'mail-address'
  | 'seal'
  | 'site-address'
  | 'slug'
  | 'tie-break'
  | 'time-zone'
  | 'timekeepers';

/** Which form the text of a schema has; set where the schema is made, and inherited by what `meta` makes of it. */
export const textForms = z.registry<{ readonly form: TextForm }>();
