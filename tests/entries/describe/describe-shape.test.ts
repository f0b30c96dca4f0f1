import { describe, expect, test } from 'vitest';
import * as z from 'zod';
import { describeFields, describeShape } from '../../../src/entries/describe/describe-shape.ts';
import type { Field, Shape } from '../../../src/entries/describe/field.ts';
import { batch } from '../../../src/entries/schema/batch.ts';
import { builderFile } from '../../../src/entries/schema/builder.ts';
import { challenge } from '../../../src/entries/schema/challenge.ts';
import { entry } from '../../../src/entries/schema/entry.ts';
import { news } from '../../../src/entries/schema/news.ts';
import { page } from '../../../src/entries/schema/page.ts';
import { ruling } from '../../../src/entries/schema/ruling.ts';
import { site } from '../../../src/entries/schema/site.ts';

const files = { batch, builderFile, challenge, entry, news, page, ruling, site };

describe('what a schema says as data', () => {
  test.each(Object.entries(files))(
    '%s: every field has a title, a description and an example',
    (_, schema) => {
      const silent = allFields(describeShape(schema)).filter(({ title, description, example }) =>
        [title, description, example].includes(''),
      );
      expect(silent.map(({ key }) => key)).toEqual([]);
    },
  );

  test('keys stand as the content format lists them', () => {
    expect(describeFields(entry).map(({ key }) => key)).toEqual(
      'name builder entered control onboard origin layout photos wing tailplane fin balance nose mass structure trim motors setups glides flights withdrawn also formerly'.split(
        ' ',
      ),
    );
  });

  test('an entry needs its name, its builder and a wing with a span, and a flight its number and date', () => {
    const required = (fields: readonly Field[]) =>
      fields.filter((field) => field.required).map(({ key }) => key);
    expect(required(describeFields(entry))).toEqual(expect.arrayContaining(['name', 'builder']));
    expect(required(fieldsAt('wing'))).toEqual(['span']);
    expect(required(fieldsAt('flights'))).toEqual(['number', 'date']);
  });

  test('a quantity says what it measures, a word which words there are', () => {
    expect(shapeAt('wing', 'span')).toEqual({ kind: 'quantity', of: 'length', negative: false });
    expect(shapeAt('tailplane', 'incidence')).toMatchObject({ of: 'angle' });
    expect(shapeAt('control')).toEqual({ kind: 'word', words: ['free', 'guided'] });
    expect(shapeAt('balance')).toEqual({ kind: 'balance' });
    expect(shapeAt('flights', 'drop')).toEqual({ kind: 'quantity', of: 'length', negative: true });
    expect(shapeAt('flights', 'date')).toEqual({ kind: 'date', precision: 'moment' });
    expect(shapeAt('motors', 'count')).toEqual({ kind: 'count', least: 1 });
  });

  test('a list says how many it may hold and whether one may stand alone', () => {
    expect(shapeAt('motors', 'at')).toMatchObject({ kind: 'list', orOne: true });
    expect(shapeAt('photos')).toMatchObject({ kind: 'list', orOne: false });
    expect(shapeAt('wing', 'panels')).toMatchObject({ kind: 'list', least: 1, most: 20 });
  });

  test('a pitch is a length, or a blade angle at a radius', () => {
    const propeller = fieldsAt('motors').find(({ key }) => key === 'propeller');
    expect(propeller?.shape).toMatchObject({
      kind: 'map',
      fields: [
        { key: 'diameter' },
        {
          key: 'pitch',
          shape: {
            kind: 'either',
            shapes: [
              { kind: 'quantity', of: 'length' },
              { kind: 'map', fields: [{ key: 'angle' }, { key: 'at' }] },
            ],
          },
        },
        { key: 'blades' },
        { key: 'after' },
      ],
    });
  });

  test('a division takes limits on figures under keys of their own', () => {
    const divisions = describeFields(challenge).find(({ key }) => key === 'divisions');
    expect(divisions?.shape).toMatchObject({ kind: 'list', of: { kind: 'map', others: { kind: 'limit' } } });
  });

  test('a schema that does not say what is written is refused', () => {
    expect(() => describeShape(z.string())).toThrow('says nothing of what is written');
  });
});

function fieldsAt(key: string): readonly Field[] {
  const shape = shapeAt(key);
  const inner = shape.kind === 'list' ? shape.of : shape;
  return inner.kind === 'map' ? inner.fields : [];
}

function shapeAt(key: string, inner?: string): Shape {
  const fields = inner === undefined ? describeFields(entry) : fieldsAt(key);
  const field = fields.find((candidate) => candidate.key === (inner ?? key));
  if (field === undefined) throw new Error(`no field ${key} ${inner}`);
  return field.shape;
}

function allFields(shape: Shape): Field[] {
  if (shape.kind === 'list') return allFields(shape.of);
  if (shape.kind === 'either') return shape.shapes.flatMap(allFields);
  if (shape.kind !== 'map') return [];
  return shape.fields.flatMap((field) => [field, ...allFields(field.shape)]);
}
