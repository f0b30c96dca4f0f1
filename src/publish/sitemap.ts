import { readFileSync } from 'node:fs';
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { addressOf } from './addresses.ts';
import { xmlText } from './feed/xml-text.ts';

/** Where a site is published; the base path has a slash at both ends. */
interface PublishedAt {
  readonly origin: string | null;
  readonly base: string;
}

/** A list for search engines holds no more (sitemaps.org, protocol 0.9). */
const mostAddresses = 50_000;

/**
 * Writes what search engines look for into a built site: `sitemap.xml` with every page that may be found, and, at the
 * root of a host, the `robots.txt` that names it. Below a path nobody asks for a `robots.txt` (RFC 9309, 2.3), and a
 * list must hold whole addresses, so that a site without one gets neither.
 *
 * @param files files of the site, relative, with `/`
 */
export async function writeSitemap(
  folder: string,
  files: readonly string[],
  { origin, base }: PublishedAt,
): Promise<void> {
  if (origin === null) return;
  const listed: string[] = [];
  for (const file of files.filter((one) => one.endsWith('.html')).sort()) {
    const address = `${origin}${base}${addressOf(file).slice(1)}`;
    const page = readFileSync(join(folder, file));
    if (mayBeFound(page.toString('utf8', 0, page.indexOf('</head>')), address)) listed.push(address);
  }
  await writeFile(join(folder, 'sitemap.xml'), sitemapText(listed.slice(0, mostAddresses)));
  if (base === '/')
    await writeFile(
      join(folder, 'robots.txt'),
      `User-agent: *\nAllow: /\n\nSitemap: ${origin}/sitemap.xml\n`,
    );
}

/** A page that asks not to be found says so, and one that leads on names another page as the one to find. */
function mayBeFound(head: string, address: string): boolean {
  const canonical = /<link rel="canonical" href="([^"]*)"/.exec(head)?.[1];
  return canonical === xmlText(address) && !/<meta name="robots" content="[^"]*noindex/.test(head);
}

/** No dates: the day of a build says nothing of a page. */
function sitemapText(addresses: readonly string[]): string {
  return `${[
    '<?xml version="1.0" encoding="utf-8"?>',
    '<urlset xmlns="http://www.sitemaps.org/schemas/sitemap/0.9">',
    ...addresses.map((address) => ` <url><loc>${xmlText(address)}</loc></url>`),
    '</urlset>',
  ].join('\n')}\n`;
}
