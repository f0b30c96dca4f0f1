import { mkdirSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { type BrowserServer, chromium } from 'playwright-core';

/**
 * A real Chromium: the one that comes as a package where there is one for this system, else the browser named by
 * E2E_BROWSER, else an installed Chrome or Edge. Throws with a plain sentence where there is none.
 */
export async function launchBrowser(): Promise<BrowserServer> {
  const named = process.env.E2E_BROWSER;
  if (named !== undefined && named !== '') return chromium.launchServer({ executablePath: named });
  if (process.platform === 'linux' && process.arch === 'x64') return launchPackaged();
  for (const channel of ['chrome', 'msedge']) {
    try {
      return await chromium.launchServer({ channel });
    } catch {
      // Not installed: the next one, and in the end the sentence below.
    }
  }
  throw new Error(
    'The browser tests need Chrome or Edge, or the path of a Chromium in the environment variable E2E_BROWSER.',
  );
}

/** Our own arguments: the package's would switch off the rules between hosts, and so hide faults. */
const packagedArguments = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--disable-quic',
  '--no-first-run',
];

async function launchPackaged(): Promise<BrowserServer> {
  const described: unknown = JSON.parse(
    await readFile(new URL('../../node_modules/@sparticuz/chromium/package.json', import.meta.url), 'utf8'),
  );
  const version =
    typeof described === 'object' && described !== null && 'version' in described
      ? described.version
      : 'unknown';
  // The package unpacks to the temporary folder and takes whatever lies there already, of any version.
  const folder = new URL(`../../node_modules/.cache/chromium-${String(version)}`, import.meta.url).pathname;
  mkdirSync(folder, { recursive: true });
  const before = process.env.TMPDIR;
  process.env.TMPDIR = folder;
  try {
    const { default: packaged } = await import('@sparticuz/chromium');
    const executablePath = await packaged.executablePath();
    return await chromium.launchServer({ executablePath, args: packagedArguments });
  } finally {
    if (before === undefined) delete process.env.TMPDIR;
    else process.env.TMPDIR = before;
  }
}
