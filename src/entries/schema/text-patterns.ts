import { slug } from '../folder/slug-rules.ts';
import type { FixedForm } from './text-form.ts';

/**
 * How the texts of a fixed shape are written: what the reader of the field goes by, and what an editor can check while one
 * types. Without flags and with whole texts in view, because a JSON Schema has no flags. A form that is not here has
 * no shape that a pattern can tell.
 */
export const textPatterns = {
  allowance: /^\s*(?:at most\s+)?(\d{1,6})\s*$/,
  colour: /^#[0-9A-Fa-f]{6}$/,
  'entry-address': /^[a-z0-9-]{1,64}\/[a-z0-9-]{1,64}$/,
  link: /^[Hh][Tt][Tt][Pp][Ss]?:\/\/[^\s/?#@"<>]+([/?#][^\s"<>]*)?$/,
  'mail-address': /^[^\s@<>":]+@[^\s@<>".]+(\.[^\s@<>".]+)+$/,
  seal: /^1-[0-9a-f]{16}$/,
  slug,
  'time-zone': /^(UTC|[A-Z][A-Za-z_+-]*(\/[A-Za-z0-9_+-]+){1,2})$/,
  timekeepers: /^\s*(\d{1,3})(\s+or\s+video)?\s*$/,
} as const satisfies Partial<Record<FixedForm, RegExp>>;
