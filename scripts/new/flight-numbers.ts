import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { toPlain } from '../../src/entries/source/locate.ts';
import { type ReadSource, readJsonSource, readSource } from '../../src/entries/source/read-source.ts';
import type { Plain } from '../../src/entries/source/source.ts';
import { splitPlain } from '../../src/entries/source/split-plain.ts';
import { isList, isMap } from '../../src/entries/write/yaml-text.ts';
import type { EntryPlace } from './places.ts';

/**
 * Every number that a flight of an entry ever had, as far as the folder knows: in its file, in its rulings and in the frozen
 * result, where a flight may stand that its builder deleted.
 */
export async function numbersGiven(
  folder: string,
  { challenge, entry, file }: EntryPlace,
  text: string,
): Promise<readonly number[]> {
  const flown = numbersIn(plainOf(readSource(file, text, splitPlain)), 'flights', 'number');
  const ruling = await textOf(join(folder, `rulings/${challenge}/${entry}.md`));
  const ruled = numbersIn(plainOf(readSource(file, ruling ?? '', splitPlain)), 'flights', 'flight');
  const result = plainOf(
    readJsonSource(file, (await textOf(join(folder, `results/${challenge}.json`))) ?? '{}'),
  );
  const entries =
    isMap(result) && result.entries !== undefined && isList(result.entries) ? result.entries : [];
  const frozen = entries
    .filter((each) => isMap(each) && each.entry === entry)
    .flatMap((each) => numbersIn(each, 'flights', 'number'));
  return [...flown, ...ruled, ...frozen];
}

async function textOf(path: string): Promise<string | null> {
  return existsSync(path) ? readFile(path, 'utf8') : null;
}

function plainOf({ source }: ReadSource): Plain {
  return source === null ? {} : toPlain(source.root);
}

function numbersIn(fields: Plain, list: string, key: string): number[] {
  const items = isMap(fields) ? fields[list] : undefined;
  if (items === undefined || !isList(items)) return [];
  return items.flatMap((item) => (isMap(item) && item[key] !== undefined ? [Number(item[key])] : []));
}
