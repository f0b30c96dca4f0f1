import * as z from 'zod';
import type { Path } from '../source/source.ts';

/** What a field says of itself, for people: the one source of messages, form labels, templates and field tables. */
export interface FieldDescription {
  readonly title: string;
  readonly description: string;
  /** As one would write it in the file. */
  readonly example: string;
}

/**
 * The schemas that may stand at a path; more than one where a field has several forms, none where the path leads
 * into what the schema does not know.
 */
export function schemasAt(schema: z.core.$ZodType, path: Path): z.core.$ZodType[] {
  const [key, ...rest] = path;
  const forms = formsOf(schema);
  if (key === undefined) return forms;
  return forms.flatMap((form) => {
    const inner = innerOf(form, key);
    return inner === null ? [] : schemasAt(inner, rest);
  });
}

/** The schemas that read what is written in the field at a path; more than one where what is above it has several forms. */
export function readersAt(schema: z.core.$ZodType, path: Path): z.core.$ZodType[] {
  const key = path.at(-1);
  if (key === undefined) return [schema];
  return schemasAt(schema, path.slice(0, -1))
    .map((parent) => innerOf(parent, key))
    .filter((reader) => reader !== null);
}

/** What the field at a path says of itself; null where it says nothing. */
export function describedAt(schema: z.core.$ZodType, path: Path): FieldDescription | null {
  const key = path.at(-1);
  if (key === undefined) return descriptionOf(schema);
  for (const parent of schemasAt(schema, path.slice(0, -1))) {
    const inner = innerOf(parent, key);
    const description = inner === null ? null : descriptionOf(inner);
    if (description !== null) return description;
  }
  return null;
}

/** The keys known at a path, in the order of the schema. */
export function keysAt(schema: z.core.$ZodType, path: Path): string[] {
  return schemasAt(schema, path).flatMap((form) =>
    form instanceof z.ZodObject ? Object.keys(form.shape) : [],
  );
}

/** Whether the field at a path may be left out; an item of a list may. */
export function mayBeAbsent(schema: z.core.$ZodType, path: Path): boolean {
  const key = path.at(-1);
  if (key === undefined) return false;
  const fields = schemasAt(schema, path.slice(0, -1)).map((parent) => innerOf(parent, key));
  return typeof key === 'number' || fields.some((field) => field instanceof z.ZodOptional);
}

function innerOf(form: z.core.$ZodType, key: string | number): z.core.$ZodType | null {
  if (form instanceof z.ZodObject) return form.shape[String(key)] ?? form.def.catchall ?? null;
  if (form instanceof z.ZodArray) return form.element;
  if (form instanceof z.ZodRecord) return form.valueType;
  return null;
}

/** What a schema says of the field it stands for; null where it says nothing. */
export function descriptionOf(schema: z.core.$ZodType): FieldDescription | null {
  const meta = z.globalRegistry.get(schema);
  if (meta?.title !== undefined)
    return {
      title: meta.title,
      description: meta.description ?? '',
      example: typeof meta.example === 'string' ? meta.example : '',
    };
  if (schema instanceof z.ZodOptional) return descriptionOf(schema.unwrap());
  return null;
}

/** Looks through wrappers: optional, one or many, text that is read further, and alternatives. */
function formsOf(schema: z.core.$ZodType): z.core.$ZodType[] {
  if (schema instanceof z.ZodOptional) return formsOf(schema.unwrap());
  if (schema instanceof z.ZodUnion) return schema.options.flatMap(formsOf);
  if (schema instanceof z.ZodPipe)
    return formsOf(schema.in instanceof z.ZodTransform ? schema.out : schema.in);
  return [schema];
}
