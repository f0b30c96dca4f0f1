import { copyFile, mkdir } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import type { Almanac } from '../almanac/almanac.ts';
import { addressOf } from './addresses.ts';

/** A file to copy inside a built site, so that an address goes on answering. */
export interface KeptAddress {
  readonly from: string;
  readonly to: string;
}

/**
 * What keeps old addresses alive beside the pages that lead on: the data files of a renamed challenge, and the notice
 * of things left out where a page is gone only because a file could not be read. A challenge that cannot be read is
 * no such case: then the last site stays as it is.
 *
 * @param files files of the new site, relative, with `/`
 * @param previous addresses of the last site
 */
export function keptAddresses(
  almanac: Almanac,
  files: readonly string[],
  previous: readonly string[],
): KeptAddress[] {
  const there = new Set(files.map(addressOf));
  const data = almanac.challenges.flatMap(({ challenge }) =>
    challenge.formerly.flatMap((old) =>
      ['json', 'csv'].map((ending) => ({
        from: `data/${challenge.id}.${ending}`,
        to: `data/${old}.${ending}`,
      })),
    ),
  );
  const notices = previous
    .filter((address) => !there.has(address) && isLeftOut(address, almanac))
    .map((address) => ({ from: 'left-out/index.html', to: `${address.slice(1)}index.html` }));
  return [...data, ...notices].filter(({ to }) => !files.includes(to));
}

/** Makes the copies in the folder of the new site. */
export async function writeKeptAddresses(folder: string, kept: readonly KeptAddress[]): Promise<void> {
  for (const { from, to } of kept) {
    await mkdir(dirname(join(folder, to)), { recursive: true });
    await copyFile(join(folder, from), join(folder, to));
  }
}

function isLeftOut(address: string, almanac: Almanac): boolean {
  const [, room = '', name = ''] = /^\/(?:([^/]+)\/)?([^/]+)\/$/.exec(address) ?? [];
  if (name === '') return false;
  // Who built an entry stands in the entry: where it can't be read, its builder may have no other page.
  if (room === 'builders' && almanac.leftOut.length > 0) return true;
  const file = `${room === '' ? 'pages' : room}/${name}.md`;
  return (
    ['builders', 'rubber', 'news', 'pages'].includes(file.split('/')[0] ?? '') &&
    almanac.files.some((account) => account.file === file && account.fate === 'left-out')
  );
}
