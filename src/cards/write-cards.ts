import { createHash } from 'node:crypto';
import { copyFile, mkdir, readdir, readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { basename, dirname, join } from 'node:path';
import sharp from 'sharp';
import type { Almanac } from '../almanac/almanac.ts';
import { keepFile } from '../publish/kept-file.ts';
import { cardOf } from './card.ts';
import { type CardFont, readCardFonts } from './card-fonts.ts';
import { cardPicture } from './card-picture.ts';

/**
 * Puts the card of every challenge into a built site: those that were drawn before come from the cache, and where all
 * did, not even a typeface is read.
 *
 * @param cache absolute path of the folder where cards are kept
 * @param out absolute path of the built site
 */
export async function writeCards(almanac: Almanac, cache: string, out: string): Promise<void> {
  const drawn = join(cache, await making());
  let fonts: Promise<CardFont[]> | null = null;
  for (const record of almanac.challenges) {
    const card = cardOf(almanac, record);
    const { path } = cardPicture(card);
    const kept = join(drawn, basename(path));
    await keepFile(kept, async () => {
      // Loaded where it is needed only: it is larger than all else that a build loads.
      const { cardPng, cardSvg } = await import('./draw-card.ts');
      fonts ??= readCardFonts();
      return cardPng(await cardSvg(card, await fonts));
    });
    const published = join(out, path);
    await mkdir(dirname(published), { recursive: true });
    await copyFile(kept, published);
  }
}

/** Changes with whatever draws a card, so that a kept one is never of another making. */
async function making(): Promise<string> {
  const { resolve } = createRequire(import.meta.url);
  const here = import.meta.dirname;
  const sources = [
    ...(await readdir(here)).sort().map((name) => join(here, name)),
    resolve('../components/mark-picture.ts'),
    ...['source-sans-3', 'brygada-1918'].map((family) => resolve(`@fontsource/${family}/package.json`)),
    resolve('satori/package.json'),
  ];
  const hash = createHash('sha256').update(JSON.stringify(sharp.versions));
  for (const source of sources) hash.update(await readFile(source));
  return hash.digest('hex').slice(0, 12);
}
