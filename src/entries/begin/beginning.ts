import type * as z from 'zod';
import { describeShape } from '../describe/describe-shape.ts';
import type { Shape } from '../describe/field.ts';
import { readText } from '../schema/text-field.ts';
import type { Path } from '../source/source.ts';
import { after } from '../write/after.ts';
import { settingField } from '../write/edit-field.ts';
import type { PlainMap } from './begin-file.ts';
import { fieldNamed } from './field-named.ts';
import { readAnswer } from './read-answer.ts';

/** Something asked for, where fields are asked for one after another. Fields are named with dots between their keys. */
export interface Question {
  readonly field: string;
  readonly optional?: true;
  /** Not asked where one of these is there. */
  readonly unless?: readonly string[];
  /** Asked only where this one is there. */
  readonly when?: string;
  /** What to say besides what the field says of itself. */
  readonly hint?: string;
}

/** Questions that may be passed over together. */
export interface Group {
  readonly title: string;
  readonly questions: readonly Question[];
  /** Figures of the model that are not known without it: where rules set a limit on one, it had better not be passed over. */
  readonly tells?: readonly { readonly figure: string; readonly unless?: string }[];
}

/** How a new thing of a kind begins: what can be given for it, and what is asked where that is not enough. */
export interface Beginning {
  /** Such as "an entry". */
  readonly called: string;
  readonly schema: z.ZodObject;
  /** Options of the command, in the order of its help, and the field that each writes. */
  readonly options: Readonly<Record<string, string>>;
  readonly questions: readonly Question[];
  readonly groups: readonly Group[];
  /** What a new file offers as remarks. */
  readonly offered: readonly string[];
  /** What a new file says below its fields. */
  readonly body: string;
}

/** The options that are called as the schema's own keys, but for those left out. */
export function keysAsOptions(schema: z.ZodObject, leftOut: readonly string[]): Record<string, string> {
  return Object.fromEntries(
    Object.keys(schema.shape)
      .filter((key) => !leftOut.includes(key))
      .map((key) => [key, key]),
  );
}

export type Setting =
  | { readonly ok: true; readonly fields: PlainMap; readonly path: Path }
  | { readonly ok: false; readonly message: string };

/** The fields with one more, as it was typed; or why there is no place for it. */
export function setNamed(schema: z.ZodObject, fields: PlainMap, name: string, typed: string): Setting {
  const found = fieldNamed(describeShape(schema), name);
  if (!found.ok) return found;
  const { path, shape } = found.named;
  const text = readText(typed);
  if (!text.ok) return { ok: false, message: `\`${name}\`: ${text.fault.message}` };
  const change = settingField(schema, fields, path, readAnswer(shape, typed));
  const next = change === null ? null : after(fields, change);
  if (next === null)
    return {
      ok: false,
      message: `\`${name}\` has no place yet: a value stands where its fields would, or a list has fewer items.`,
    };
  return { ok: true, fields: next as PlainMap, path };
}

/** Whether a field is given. */
export function isGiven(shape: Shape, fields: PlainMap, name: string): boolean {
  const found = fieldNamed(shape, name);
  if (!found.ok) return false;
  let node: unknown = fields;
  for (const step of found.named.path) {
    if (typeof node === 'string') return true;
    if (typeof node !== 'object' || node === null || !Object.hasOwn(node, step)) return false;
    node = (node as Readonly<Record<string | number, unknown>>)[step];
  }
  return true;
}
