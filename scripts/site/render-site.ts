import { mkdir, mkdtemp, readdir, realpath, rm, stat } from 'node:fs/promises';
import { join } from 'node:path';
import type { Almanac } from '../../src/almanac/almanac.ts';
import { handOver } from '../../src/almanac/handover.ts';
import { projectFolder } from '../folders/project-folder.ts';

/** Where a site is published: its origin, null where nobody said, and its base path with a slash at both ends. */
export interface SiteAddress {
  readonly origin: string | null;
  readonly base: string;
}

/** No build takes an hour: an older folder is one that a killed build left. Milliseconds. */
const abandonedAfter = 3_600_000;

/**
 * Makes a folder of this build's own below the project, where the pages are rendered. It must be there: what the site
 * generator writes on its way imports the project's packages. No two builds share one.
 */
export async function renderingFolder(): Promise<string> {
  const parent = join(projectFolder, 'node_modules/.cache/last-turn/builds');
  await mkdir(parent, { recursive: true });
  for (const name of await readdir(parent)) {
    const left = await stat(join(parent, name)).catch(() => null);
    if (left !== null && Date.now() - left.mtimeMs > abandonedAfter)
      await rm(join(parent, name), { recursive: true, force: true });
  }
  return realpath(await mkdtemp(join(parent, 'build-')));
}

/**
 * Prepares the environment in which pages are rendered: no request to anybody, and none of the variables that the site
 * generator would take for its own settings. A `BASE_URL` of somebody's shell must not become the site's base path.
 */
export function setEnvironment(mode: 'production' | 'development'): void {
  for (const name of ['BASE_URL', 'SITE', 'MODE', 'PROD', 'DEV', 'SSR', 'ASSETS_PREFIX'])
    delete process.env[name];
  process.env.ASTRO_TELEMETRY_DISABLED = '1';
  process.env.ASTRO_DISABLE_UPDATE_CHECK = 'true';
  process.env.NODE_ENV = mode;
}

/** Renders all pages of an almanac into `folder/site` and gives that path. Rejects where a page cannot be rendered. */
export async function renderSite(almanac: Almanac, address: SiteAddress, folder: string): Promise<string> {
  const site = join(folder, 'site');
  setEnvironment('production');
  // The site generator puts its intermediate files below the working folder.
  process.chdir(projectFolder);
  handOver(almanac);
  const { build } = await import('astro');
  await build({
    root: projectFolder,
    outDir: site,
    cacheDir: join(folder, 'cache'),
    base: address.base,
    ...(address.origin === null ? {} : { site: address.origin }),
    logLevel: 'error',
    vite: { logLevel: 'error', cacheDir: join(folder, 'vite') },
  });
  return site;
}
