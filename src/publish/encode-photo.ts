import { createHash } from 'node:crypto';
import { mkdir, readFile, rename, stat, writeFile } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import sharp from 'sharp';
import type { PhotoVariant } from './photo-variants.ts';

const webp = { quality: 80, effort: 4 } as const;
const jpeg = { quality: 82, mozjpeg: true, progressive: true } as const;

/** Changes with the encoder and its settings, so that a cached copy is never one of another making. */
const making = createHash('sha256')
  .update(JSON.stringify({ webp, jpeg, libraries: sharp.versions }))
  .digest('hex')
  .slice(0, 12);

/**
 * Gives the file of one published copy of a photo, made now or found in the cache. The picture is turned upright and
 * encoded anew; nothing of the original's metadata (place, time, camera, colour profile) goes along.
 * Rejects where the picture can't be decoded.
 *
 * @param original absolute path of the photo
 * @param cache absolute path of the folder where copies are kept
 */
export async function encodePhoto(original: string, variant: PhotoVariant, cache: string): Promise<string> {
  const file = join(cache, making, basename(variant.path));
  if (await exists(file)) return file;
  const picture = sharp(await readFile(original), { sequentialRead: true })
    .autoOrient()
    .resize({ width: variant.width, height: variant.height, fit: 'fill' })
    .flatten({ background: '#ffffff' });
  const bytes = await (variant.format === 'webp' ? picture.webp(webp) : picture.jpeg(jpeg)).toBuffer();
  await mkdir(dirname(file), { recursive: true });
  // Written beside and renamed: a killed build leaves no half picture for the next one to find.
  const beside = `${file}.${process.pid}`;
  await writeFile(beside, bytes);
  await rename(beside, file);
  return file;
}

async function exists(file: string): Promise<boolean> {
  return stat(file).then(
    (found) => found.size > 0,
    () => false,
  );
}
