import { parse } from 'yaml';
import * as z from 'zod';
import { describeShape } from '../describe/describe-shape.ts';
import type { FileKind } from '../schema/file-kinds.ts';
import { jsonOfShape } from './json-of-shape.ts';
import type { JsonSchema } from './json-schema.ts';

/**
 * The JSON Schema of a kind of file, for editors: of its front matter, or of the whole file where that is JSON.
 *
 * @param address where the schema is published; null where nobody knows
 */
export function schemaOfFile(kind: FileKind, address: string | null): JsonSchema {
  return {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    ...(address !== null && { $id: address }),
    title: kind.title,
    description: `${kind.description}.`,
    ...(kind.stands.endsWith('.json') ? exactly(kind.schema) : jsonOfShape(describeShape(kind.schema))),
  };
}

/** JSON has the types of its schema, so that nothing is to be said of how they are written. */
function exactly(schema: z.core.$ZodType): JsonSchema {
  const { $schema: _, ...keywords } = z.toJSONSchema(schema, {
    override: ({ jsonSchema }) => {
      const { example } = jsonSchema;
      delete jsonSchema.example;
      if (typeof example === 'string') jsonSchema.examples = [parse(example)];
    },
  });
  return keywords as JsonSchema;
}
