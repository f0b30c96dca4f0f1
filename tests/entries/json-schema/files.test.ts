import { readdirSync } from 'node:fs';
import { join, relative, resolve } from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, it, test } from 'vitest';
import { classifyPath } from '../../../src/entries/folder/classify-path.ts';
import type { JsonSchema } from '../../../src/entries/json-schema/json-schema.ts';
import { schemaOfFile } from '../../../src/entries/json-schema/schema-of-file.ts';
import { fileKinds } from '../../../src/entries/schema/file-kinds.ts';
import { asEditorReads, editorOf, faultsOf, kindNamed, strict } from './editor.ts';

const root = resolve(import.meta.dirname, '../../..');
const folders = ['tests/cases/format-1', 'content'];

/** How `classifyPath` calls the kinds; two of them have plainer names in addresses. */
const named: Readonly<Record<string, string>> = { batch: 'rubber' };

function filesOf(folder: string): { readonly kind: string; readonly file: string }[] {
  return readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
    .filter((item) => item.isFile() && /\.(md|json)$/.test(item.name))
    .map((item) => join(item.parentPath, item.name))
    .map((file) => {
      const { kind } = classifyPath(relative(join(root, folder), file).replaceAll('\\', '/'));
      return { kind: named[kind] ?? kind, file };
    })
    .filter(({ kind }) => fileKinds.some((known) => known.kind === kind));
}

describe('the schemas', () => {
  test.each(fileKinds.map(({ kind }) => kind))('%s.json is a schema of draft 2020-12', (kind) => {
    const ajv = new Ajv2020(strict);
    expect(ajv.validateSchema(schemaOfFile(kindNamed(kind), null))).toBe(true);
    expect(() =>
      ajv.compile(schemaOfFile(kindNamed(kind), 'https://fenside.example/a/b.json')),
    ).not.toThrow();
  });

  test.each(folders)('every file of %s is valid', (folder) => {
    const editors = new Map(fileKinds.map(({ kind }) => [kind, editorOf(kind)]));
    const files = filesOf(folder);
    const wrong = files.flatMap(({ kind, file }) => {
      const editor = editors.get(kind);
      if (editor === undefined) throw new Error(`no schema of ${kind}`);
      return faultsOf(editor, asEditorReads(file)).map((fault) => `${relative(root, file)}: ${fault}`);
    });
    expect(wrong).toEqual([]);
    expect(new Set(files.map(({ kind }) => kind))).toEqual(new Set(fileKinds.map(({ kind }) => kind)));
  });

  test.each(fileKinds.map(({ kind }) => kind))('%s.json accepts every example it gives', (kind) => {
    const found = withExamples(schemaOfFile(kindNamed(kind), null));
    expect(found.length).toBeGreaterThan(2);
    const wrong = found.flatMap(({ schema, examples }) => {
      const validate = new Ajv2020(strict).compile(schema);
      return examples.flatMap((example) =>
        faultsOf(validate, example).map((fault) => `${schema.title}: ${JSON.stringify(example)} ${fault}`),
      );
    });
    expect(wrong).toEqual([]);
  });

  it('are the same every time, with their keywords in the same order', () => {
    const texts = () => fileKinds.map((kind) => JSON.stringify(schemaOfFile(kind, null)));
    expect(texts()).toEqual(texts());
  });

  it('carry their address where there is one, and none where there is none', () => {
    const address = 'https://fenside.example/long-haul/schema/page.json';
    expect(schemaOfFile(kindNamed('page'), address).$id).toBe(address);
    expect(schemaOfFile(kindNamed('page'), null)).not.toHaveProperty('$id');
  });
});

describe('where a kind of file stands', () => {
  test.each(fileKinds.map(({ kind, stands }) => [stands, kind]))(
    '%s is a file of the kind %s',
    (stands, kind) => {
      const path = stands.replace('<date>', '2027-05-09').replaceAll(/<[a-z]+>/g, 'heron');
      const found = classifyPath(path).kind;
      expect(named[found] ?? found).toBe(kind);
    },
  );
});

function withExamples(
  schema: JsonSchema,
): { readonly schema: JsonSchema; readonly examples: readonly unknown[] }[] {
  const found = Array.isArray(schema.examples) ? [{ schema, examples: schema.examples }] : [];
  const inner = Object.values(schema).filter((value) => typeof value === 'object' && value !== null);
  return [...found, ...inner.flatMap((value) => withExamples(value as JsonSchema))];
}
