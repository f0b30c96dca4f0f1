import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build } from 'astro';
import type { Almanac } from '../../src/almanac/almanac.ts';
import { handOver } from '../../src/almanac/handover.ts';

/** A site built from an almanac written by hand. */
export interface BuiltPages {
  readonly folder: string;
  readonly page: (path: string) => Promise<string>;
  readonly remove: () => Promise<void>;
}

/** The path below which the pages are built: two folders deep, so that a link without it breaks. */
export const base = '/club/trials/';

/** Builds the pages of an almanac into a temporary folder. */
export async function buildPages(almanac: Almanac): Promise<BuiltPages> {
  const folder = await mkdtemp(join(tmpdir(), 'last-turn-pages-'));
  handOver(almanac);
  await build({
    root: new URL('../..', import.meta.url).pathname,
    outDir: folder,
    base,
    logLevel: 'error',
  });
  return {
    folder,
    page: (path) => readFile(join(folder, path.endsWith('/') ? `${path}index.html` : path), 'utf8'),
    remove: () => rm(folder, { recursive: true, force: true }),
  };
}
