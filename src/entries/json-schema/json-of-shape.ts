import { parse } from 'yaml';
import { acceptedShape } from '../describe/accepted-shape.ts';
import type { Field, Shape } from '../describe/field.ts';
import { limitsOnFigures } from './figure-limits.ts';
import { jsonOfText } from './json-of-text.ts';
import type { Json, JsonSchema } from './json-schema.ts';

/** What an editor may check of a shape: which keys there are, which are required, and what stands in each. */
export function jsonOfShape(shape: Shape): JsonSchema {
  switch (shape.kind) {
    case 'map':
      return jsonOfMap(shape);
    case 'list':
      return jsonOfList(shape);
    case 'either':
      return { anyOf: shape.shapes.map(jsonOfShape) };
    default:
      return jsonOfText(shape);
  }
}

function jsonOfMap({ fields, others }: Shape & { readonly kind: 'map' }): JsonSchema {
  const required = fields.filter((field) => field.required).map(({ key }) => key);
  const known = Object.fromEntries(fields.map((field) => [field.key, jsonOfField(field)]));
  const isOpenToFigures = others?.kind === 'limit';
  return {
    type: 'object',
    properties: isOpenToFigures ? { ...known, ...limitsOnFigures() } : known,
    ...(required.length > 0 && { required }),
    additionalProperties: others === null || isOpenToFigures ? false : jsonOfShape(others),
  };
}

function jsonOfList({ of, least, most, orOne }: Shape & { readonly kind: 'list' }): JsonSchema {
  const item = jsonOfShape(of);
  const list = {
    type: 'array',
    items: item,
    ...(least > 0 && { minItems: least }),
    ...(most !== null && { maxItems: most }),
  };
  return orOne ? { anyOf: [item, list] } : list;
}

function jsonOfField({ title, description, example, shape }: Field): JsonSchema {
  const accepted = holdsMaps(shape) ? '' : ` Write ${acceptedShape(shape)}.`;
  return {
    title,
    description: `${description}.${accepted}`,
    ...jsonOfShape(shape),
    // Read as an editor's own reader of YAML would.
    examples: [parse(example) as Json],
  };
}

/** Whether there are maps in a shape: their own fields say what may be written. */
function holdsMaps(shape: Shape): boolean {
  if (shape.kind === 'list') return holdsMaps(shape.of);
  if (shape.kind === 'either') return shape.shapes.some(holdsMaps);
  return shape.kind === 'map';
}
