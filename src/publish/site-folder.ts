import { readdir, readFile, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { addressesFile } from './addresses.ts';

/** Why a folder must not be built into, as a sentence; null where it may be: absent, empty or a site built here. */
export async function refusalToBuildInto(out: string): Promise<string | null> {
  const found = await stat(out).catch(() => null);
  if (found === null) return null;
  if (!found.isDirectory()) return `${out} is a file, not a folder. Choose another place with --out.`;
  const names = await readdir(out);
  if (names.length === 0 || names.includes(addressesFile)) return null;
  return (
    `${out} holds files that no build of this generator made (there is no ${addressesFile} in it), ` +
    'so it is left alone. Choose another place with --out, or empty the folder.'
  );
}

/** The text of the last site's list of addresses; null where there is none. */
export async function lastAddresses(out: string): Promise<string | null> {
  return readFile(join(out, addressesFile), 'utf8').catch(() => null);
}

/** Every file below a folder, relative, with `/`, sorted; folders that `skip` names are not entered. */
export async function filesBelow(folder: string, skip: ReadonlySet<string> = new Set()): Promise<string[]> {
  const found: string[] = [];
  async function enter(path: string): Promise<void> {
    for (const item of await readdir(join(folder, path), { withFileTypes: true })) {
      const below = path === '' ? item.name : `${path}/${item.name}`;
      if (!item.isDirectory()) found.push(below);
      else if (!skip.has(item.name)) await enter(below);
    }
  }
  await enter('');
  return found.sort();
}
