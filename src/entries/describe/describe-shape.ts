import * as z from 'zod';
import { descriptionOf } from '../schema/field-at.ts';
import { textForms } from '../schema/text-form.ts';
import type { Field, Shape } from './field.ts';

/**
 * What a schema of a content file says, as data: for the form, the templates, the tables of fields and the JSON Schemas.
 * The keys stand in the order of the schema. Made for the schemas of `schema/` alone: a schema that says nothing of the
 * text it reads is a mistake in the code, and thrown.
 */
export function describeShape(schema: z.core.$ZodType): Shape {
  const form = textForms.get(schema)?.form;
  if (form !== undefined) return form;
  if (schema instanceof z.ZodOptional || schema instanceof z.ZodNullable)
    return describeShape(schema.unwrap());
  if (schema instanceof z.ZodObject) return mapShape(schema);
  if (schema instanceof z.ZodRecord)
    return { kind: 'map', fields: [], others: describeShape(schema.valueType) };
  if (schema instanceof z.ZodUnion) return { kind: 'either', shapes: schema.options.map(describeShape) };
  if (schema instanceof z.ZodArray) return listShape(schema, false);
  if (schema instanceof z.ZodPipe && schema.out instanceof z.ZodArray) return listShape(schema.out, true);
  throw new Error(`A schema of type "${schema._zod.def.type}" says nothing of what is written in its place.`);
}

/** The fields of a file, or of a map in it, in the order of the schema; none where it is no map. */
export function describeFields(schema: z.core.$ZodType): readonly Field[] {
  const shape = describeShape(schema);
  return shape.kind === 'map' ? shape.fields : [];
}

function mapShape(schema: z.ZodObject): Shape {
  const { catchall } = schema.def;
  const others = catchall === undefined || catchall instanceof z.ZodNever ? null : describeShape(catchall);
  return { kind: 'map', fields: Object.entries(schema.shape).map(fieldOf), others };
}

function fieldOf([key, schema]: [string, z.core.$ZodType]): Field {
  const { title, description, example } = descriptionOf(schema) ?? {
    title: key,
    description: '',
    example: '',
  };
  const required = !(schema instanceof z.ZodOptional);
  return { key, title, description, example, required, shape: describeShape(schema) };
}

function listShape(schema: z.ZodArray, orOne: boolean): Shape {
  let least = 0;
  let most: number | null = null;
  for (const check of schema.def.checks ?? []) {
    const { def } = check._zod;
    if (isMinimum(def)) least = def.minimum;
    if (isMaximum(def)) most = def.maximum;
  }
  return { kind: 'list', of: describeShape(schema.element), least, most, orOne };
}

function isMinimum(def: z.core.$ZodCheckDef): def is z.core.$ZodCheckMinLengthDef {
  return def.check === 'min_length';
}

function isMaximum(def: z.core.$ZodCheckDef): def is z.core.$ZodCheckMaxLengthDef {
  return def.check === 'max_length';
}
