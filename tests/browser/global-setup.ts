import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { TestProject } from 'vitest/node';
import { main as build } from '../../scripts/build.ts';
import { launchBrowser } from './launch-browser.ts';
import { serveFolder } from './serve-folder.ts';

declare module 'vitest' {
  export interface ProvidedContext {
    /** Folder of the demo site, built once. */
    readonly siteFolder: string;
    /** Address of its front page, below a path. */
    readonly siteAddress: string;
    /** Where the one browser listens. */
    readonly browserEndpoint: string;
  }
}

const base = '/club/trials/';

/** Builds the demo content once, serves it below a path, and starts one browser for all tests of the site. */
export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  const folder = await mkdtemp(join(tmpdir(), 'last-turn-site-'));
  const out = join(folder, 'site');
  const code = await build([
    '--out',
    out,
    '--site',
    `https://club.example${base}`,
    '--now',
    '2026-11-25T00:00:00Z',
  ]);
  if (code !== 0) throw new Error(`The demo site was not built: exit code ${code}.`);
  const served = await serveFolder(out, base);
  const browser = await launchBrowser();
  project.provide('siteFolder', out);
  project.provide('siteAddress', served.address);
  project.provide('browserEndpoint', browser.wsEndpoint());
  return async () => {
    await browser.close();
    await served.close();
    await rm(folder, { recursive: true, force: true });
  };
}
