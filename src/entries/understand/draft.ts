import * as z from 'zod';
import type { Moment } from '../../model/calendar.ts';
import type { Quantity } from '../../quantities/quantity.ts';
import { issuesToProblems, type Misplaced } from '../problems/issues-to-problems.ts';
import type { Problem } from '../problems/problem.ts';
import { toPlain } from '../source/locate.ts';
import type { SourceDocument } from '../source/source.ts';

/**
 * What could be read of a file that may have mistakes: what is wrong is left out, and stands as null in a list, so that
 * the checks say what else is wrong in the same run.
 */
export type Draft<T> = T extends Quantity | Moment | string | number | boolean
  ? T
  : T extends readonly (infer Item)[]
    ? readonly (Draft<Item> | null)[]
    : T extends object
      ? { readonly [Key in keyof T]?: Draft<T[Key]> }
      : T;

export interface ReadFields<T> {
  /** Everything, where nothing is wrong with any field. */
  readonly complete: T | null;
  readonly draft: Draft<T>;
  readonly problems: readonly Problem[];
}

/** Reads the fields of a file by their schema. */
export function readFields<Schema extends z.ZodObject>(
  source: SourceDocument,
  schema: Schema,
  misplaced?: Misplaced,
): ReadFields<z.output<Schema>> {
  const plain = toPlain(source.root);
  const result = schema.safeParse(plain, { reportInput: true });
  if (result.success)
    return { complete: result.data, draft: result.data as Draft<z.output<Schema>>, problems: [] };
  return {
    complete: null,
    draft: (draftOf(schema, plain) ?? {}) as Draft<z.output<Schema>>,
    problems: issuesToProblems({ source, schema, ...(misplaced && { misplaced }) }, result.error.issues),
  };
}

function draftOf(schema: z.core.$ZodType, written: unknown): unknown {
  if (written === undefined) return undefined;
  const result = z.safeParse(schema, written);
  if (result.success) return result.data;
  if (schema instanceof z.ZodOptional) return draftOf(schema.unwrap(), written);
  if (schema instanceof z.ZodPipe && schema.in instanceof z.ZodTransform) {
    const list = Array.isArray(written) ? written : [written];
    return draftOf(schema.out, list);
  }
  // Of a list that is too long nothing is looked at.
  if (result.error.issues.some(({ code, path }) => code === 'too_big' && path.length === 0)) return undefined;
  if (schema instanceof z.ZodArray)
    return Array.isArray(written) ? written.map((item) => draftOf(schema.element, item) ?? null) : undefined;
  if (schema instanceof z.ZodObject && isMap(written)) {
    const read = Object.entries<z.core.$ZodType>(schema.shape)
      .map(([key, inner]) => [key, draftOf(inner, written[key])] as const)
      .filter(([, value]) => value !== undefined);
    return Object.fromEntries(read);
  }
  return undefined;
}

function isMap(written: unknown): written is Readonly<Record<string, unknown>> {
  return typeof written === 'object' && written !== null && !Array.isArray(written);
}
