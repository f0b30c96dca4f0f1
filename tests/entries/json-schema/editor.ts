import { readFileSync } from 'node:fs';
import { Ajv2020, type ValidateFunction } from 'ajv/dist/2020.js';
import { parse } from 'yaml';
import { schemaOfFile } from '../../../src/entries/json-schema/schema-of-file.ts';
import { type FileKind, fileKinds } from '../../../src/entries/schema/file-kinds.ts';
import { splitPlain } from '../../../src/entries/source/split-plain.ts';

// What an editor does, with libraries that know nothing of this project: a reader of YAML 1.2 (its core schema) makes
// numbers, true and false of plain texts, and Ajv, which implements JSON Schema 2020-12, judges what comes of it.

/** Ajv at its strictest: what it does not know, or what contradicts itself, is an error. Union types are part of the standard. */
export const strict = { strict: true, allowUnionTypes: true, allErrors: true } as const;

export function kindNamed(name: string): FileKind {
  const found = fileKinds.find(({ kind }) => kind === name);
  if (found === undefined) throw new Error(`no kind ${name}`);
  return found;
}

/** The check an editor makes of a kind of file. */
export function editorOf(name: string): ValidateFunction {
  return new Ajv2020(strict).compile(schemaOfFile(kindNamed(name), null));
}

/** What an editor's reader makes of the fields of a file. */
export function asEditorReads(file: string): unknown {
  const text = readFileSync(file, 'utf8').replace(/^\uFEFF/, '');
  return file.endsWith('.json') ? JSON.parse(text) : (parse(splitPlain(text).frontMatter) ?? {});
}

/** What is wrong, in short: where, and by which keyword. */
export function faultsOf(validate: ValidateFunction, value: unknown): string[] {
  return validate(value)
    ? []
    : (validate.errors ?? []).map(({ instancePath, message }) => `${instancePath} ${message}`);
}
