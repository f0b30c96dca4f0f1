import { createHash } from 'node:crypto';
import { lstat, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { FileAccount } from '../../src/entries/folder/content.ts';
import { ignoredBy } from '../../src/entries/folder/ignore-rules.ts';

/** Nothing that large is read; its size stands for it. */
const mostBytes = 32 * 1024 * 1024;

/**
 * What stands in each file of a content folder, as a digest, by path. Of a text the kind of its line ends does not matter;
 * links are not followed and are all alike.
 */
export async function digestsOf(
  folder: string,
  files: readonly FileAccount[],
): Promise<ReadonlyMap<string, string>> {
  const digests = new Map<string, string>();
  for (const { file } of files)
    if (!file.endsWith('/') && ignoredBy(file.slice(file.lastIndexOf('/') + 1)) === null)
      digests.set(file, await digestOf(join(folder, file)));
  return digests;
}

async function digestOf(path: string): Promise<string> {
  const stat = await lstat(path).catch(() => null);
  if (stat === null) return 'unreadable';
  if (!stat.isFile()) return 'link';
  if (stat.size > mostBytes) return `${stat.size} bytes`;
  const bytes = await readFile(path).catch(() => null);
  if (bytes === null) return 'unreadable';
  const text = /\.(?:md|csv|json)$/.test(path);
  const told = text ? bytes.toString('latin1').replaceAll('\r\n', '\n') : bytes;
  return createHash('sha256').update(told).digest('hex');
}
