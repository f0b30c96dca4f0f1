import { readFile, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { renderingFolder, renderSite } from '../../scripts/site/render-site.ts';
import type { Almanac } from '../../src/almanac/almanac.ts';

/** A site built from an almanac written by hand. */
export interface BuiltPages {
  /** Where they stand. */
  readonly folder: string;
  readonly page: (path: string) => Promise<string>;
  readonly remove: () => Promise<void>;
}

/** The path below which the pages are built: two folders deep, so that a link without it breaks. */
export const base = '/club/trials/';

/** Renders the pages of an almanac into a folder of their own. */
export async function buildPages(almanac: Almanac): Promise<BuiltPages> {
  const folder = await renderingFolder();
  const site = await renderSite(almanac, { origin: 'https://marsh.example', base }, folder);
  return {
    folder: site,
    page: (path) =>
      readFile(join(site, path === '' || path.endsWith('/') ? `${path}index.html` : path), 'utf8'),
    remove: () => rm(folder, { recursive: true, force: true }),
  };
}
