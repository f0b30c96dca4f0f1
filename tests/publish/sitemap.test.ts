import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { filesBelow } from '../../src/publish/site-folder.ts';
import { writeSitemap } from '../../src/publish/sitemap.ts';

// What a list must look like: sitemaps.org, protocol 0.9. Where robots.txt is asked for: RFC 9309, 2.3.

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'last-turn-sitemap-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

function page(file: string, canonical: string, more = ''): void {
  mkdirSync(dirname(join(folder, file)), { recursive: true });
  writeFileSync(
    join(folder, file),
    `<!doctype html><html><head><title>x</title>${more}<link rel="canonical" href="${canonical}"></head>` +
      '<body><p>&lt;meta name="robots" content="noindex"></p></body></html>',
  );
}

async function written(origin: string | null, base: string): Promise<readonly string[]> {
  await writeSitemap(folder, await filesBelow(folder), { origin, base });
  const files = await filesBelow(folder);
  return files.filter((file) => /^(?:sitemap\.xml|robots\.txt)$/.test(file));
}

describe('the list for search engines', () => {
  it('names every page that may be found by its whole address, in order', async () => {
    page('index.html', 'https://club.example/trials/');
    page('entries/a/b/index.html', 'https://club.example/trials/entries/a/b/');
    page('builders/x/index.html', 'https://club.example/trials/builders/x/');
    await written('https://club.example', '/trials/');
    expect(readFileSync(join(folder, 'sitemap.xml'), 'utf8')).toBe(
      '<?xml version="1.0" encoding="utf-8"?>\n' +
        '<urlset xmlns="http://www.sitemaps.org/schemas/sitemap/0.9">\n' +
        ' <url><loc>https://club.example/trials/builders/x/</loc></url>\n' +
        ' <url><loc>https://club.example/trials/entries/a/b/</loc></url>\n' +
        ' <url><loc>https://club.example/trials/</loc></url>\n' +
        '</urlset>\n',
    );
  });

  it('leaves out a page that asks not to be found, one that leads on, and the one for unknown addresses', async () => {
    page('index.html', 'https://club.example/');
    page('young/index.html', 'https://club.example/young/', '<meta name="robots" content="noindex">');
    page('old/index.html', 'https://club.example/new/');
    page('404.html', 'https://club.example/404/');
    await written('https://club.example', '/');
    const text = readFileSync(join(folder, 'sitemap.xml'), 'utf8');
    expect(text.match(/<loc>[^<]*/g)).toEqual(['<loc>https://club.example/']);
  });

  it('is named in robots.txt at the root of a host', async () => {
    page('index.html', 'https://club.example/');
    expect(await written('https://club.example', '/')).toEqual(['robots.txt', 'sitemap.xml']);
    expect(readFileSync(join(folder, 'robots.txt'), 'utf8')).toMatch(
      /^Sitemap: https:\/\/club\.example\/sitemap\.xml$/m,
    );
  });

  it('stands alone below a path', async () => {
    page('index.html', 'https://club.example/trials/');
    expect(await written('https://club.example', '/trials/')).toEqual(['sitemap.xml']);
  });

  it('is not written where nobody said what the address will be', async () => {
    page('index.html', 'https://club.example/');
    expect(await written(null, '/')).toEqual([]);
  });
});
