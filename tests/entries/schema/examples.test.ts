import { describe, expect, it } from 'vitest';
import * as z from 'zod';
import { batch } from '../../../src/entries/schema/batch.ts';
import { builderFile } from '../../../src/entries/schema/builder.ts';
import { challenge } from '../../../src/entries/schema/challenge.ts';
import { entry } from '../../../src/entries/schema/entry.ts';
import { describedAt, keysAt, schemasAt } from '../../../src/entries/schema/field-at.ts';
import { news } from '../../../src/entries/schema/news.ts';
import { page } from '../../../src/entries/schema/page.ts';
import { ruling } from '../../../src/entries/schema/ruling.ts';
import { site } from '../../../src/entries/schema/site.ts';
import { toPlain } from '../../../src/entries/source/locate.ts';
import type { Path } from '../../../src/entries/source/source.ts';
import { sourceOf } from '../written.ts';

const files = { entry, challenge, ruling, batch, site, page, builder: builderFile, news };

/** The paths of all fields below one, through lists. */
function fieldsBelow(schema: z.core.$ZodType, path: Path): Path[] {
  const own = keysAt(schema, path).flatMap((key) => [[...path, key], ...fieldsBelow(schema, [...path, key])]);
  const isList = schemasAt(schema, path).some((form) => form instanceof z.ZodArray);
  return isList ? [...own, ...fieldsBelow(schema, [...path, 0])] : own;
}

const all = Object.entries(files).flatMap(([file, schema]) =>
  fieldsBelow(schema, []).map((path) => ({ file, schema, path, name: `${file}: ${path.join('.')}` })),
);

describe('every field', () => {
  it('is found', () => {
    expect(all.length).toBeGreaterThan(200);
  });

  it('says in plain words what it is', () => {
    const silent = all.filter(({ schema, path }) => {
      const said = describedAt(schema, path);
      return said === null || said.title === '' || said.description === '' || said.example === '';
    });
    expect(silent.map(({ name }) => name)).toEqual([]);
  });

  it('accepts its own example', () => {
    const wrong = all.flatMap(({ schema, path, name }) => {
      const key = String(path.at(-1));
      const example = describedAt(schema, path)?.example ?? '';
      const plain = toPlain(sourceOf(`${key}: ${example}`).root);
      const written = (plain as Readonly<Record<string, unknown>>)[key];
      const accepted = schemasAt(schema, path.slice(0, -1)).some(
        (parent) => parent instanceof z.ZodObject && z.safeParse(parent.shape[key], written).success,
      );
      return accepted ? [] : [`${name}: ${example}`];
    });
    expect(wrong).toEqual([]);
  });
});

describe('the schemas', () => {
  it('can be written as JSON Schema', () => {
    const asJson = z.toJSONSchema(entry, { io: 'input', unrepresentable: 'any' });
    expect(asJson).toMatchObject({ type: 'object', additionalProperties: false });
    expect(asJson.required).toEqual(['name', 'builder', 'control', 'wing', 'mass', 'motors']);
  });

  it('refuse an empty file where something is required', () => {
    for (const [file, schema] of Object.entries(files))
      expect([file, schema.safeParse({}).success]).toEqual([file, file === 'ruling' || file === 'builder']);
  });
});
