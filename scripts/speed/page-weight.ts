import { readFile } from 'node:fs/promises';
import { posix } from 'node:path';
import { gzipSync } from 'node:zlib';
import { scanTags, type Tag } from './scan-tags.ts';

/** What a browser fetches for one page, in bytes: texts as gzip sends them, fonts and pictures as they are. */
export interface PageWeight {
  readonly html: number;
  readonly css: number;
  readonly script: number;
  /** Of the fonts that the page asks for at once; others come only where a text needs them. */
  readonly fonts: number;
  /** The widest copy of every picture, also of those that wait until they are scrolled to. */
  readonly images: number;
  /** Site paths of the fonts asked for at once. */
  readonly preloaded: readonly string[];
}

/**
 * Weighs one page of a built site with everything it refers to. Rejects where a file of it is not there.
 *
 * @param folder absolute path of the built site
 * @param base its base path, with a slash at both ends
 * @param file the page's file, relative, with `/`
 */
export async function pageWeight(folder: string, base: string, file: string): Promise<PageWeight> {
  const path = posix.join(folder, file);
  const html = await readFile(path, 'utf8');
  const tags = scanTags(html);
  const fileOf = (address: string) =>
    posix.join(folder, decodeURIComponent(address.split(/[?#]/)[0]!).slice(base.length));
  const linked = (rel: string) =>
    tags.filter((tag) => tag.name === 'link' && tag.values.get('rel') === rel).map(addressOf);
  const scripts = tags.filter((tag) => tag.name === 'script' && tag.values.has('src')).map(addressOf);
  const preloaded = linked('preload').filter((address) => address.endsWith('.woff2'));
  return {
    html: gzipped(html),
    css: await sum(linked('stylesheet').map(fileOf), gzipped),
    script: await sum(await withImports(scripts.map(fileOf)), gzipped),
    fonts: await sum(preloaded.map(fileOf), plain),
    images: await sum(widestPictures(tags).map(fileOf), plain),
    preloaded: preloaded.map((address) => `/${address.slice(base.length)}`),
  };
}

function addressOf({ values }: Tag): string {
  return values.get('href') ?? values.get('src') ?? '';
}

/** Modules and whatever they import at once, each file once. */
async function withImports(files: readonly string[]): Promise<string[]> {
  const found = new Set<string>();
  const waiting = [...files];
  for (let file = waiting.pop(); file !== undefined; file = waiting.pop()) {
    if (found.has(file)) continue;
    found.add(file);
    const code = await readFile(file, 'utf8');
    for (const [, specifier = ''] of code.matchAll(/(?:\bfrom|\bimport)\s*["'](\.[^"']+)["']/g))
      waiting.push(posix.join(posix.dirname(file), specifier));
  }
  return [...found];
}

/** A source that stands before a picture is taken by every browser of today, so the picture itself is not fetched. */
function widestPictures(tags: readonly Tag[]): string[] {
  const pictures = new Set<string>();
  let before: Tag | null = null;
  for (const tag of tags) {
    if (tag.name === 'source') before ??= tag;
    if (tag.name !== 'img') continue;
    const widest = before?.values.get('srcset')?.split(',').at(-1)?.trim().split(/\s/)[0];
    pictures.add(widest ?? addressOf(tag));
    before = null;
  }
  return [...pictures];
}

async function sum(files: readonly string[], weigh: (bytes: Uint8Array) => number): Promise<number> {
  let bytes = 0;
  for (const file of new Set(files)) bytes += weigh(await readFile(file));
  return bytes;
}

function plain(bytes: Uint8Array): number {
  return bytes.length;
}

function gzipped(text: Uint8Array | string): number {
  return gzipSync(text, { level: 9 }).length;
}
