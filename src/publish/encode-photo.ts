import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { basename, join } from 'node:path';
import sharp from 'sharp';
import { limits } from '../entries/source/limits.ts';
import { keepFile } from './kept-file.ts';
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
  await keepFile(file, async () => {
    const picture = sharp(await readFile(original), {
      sequentialRead: true,
      limitInputPixels: limits.photoPixels,
    })
      .autoOrient()
      .resize({ width: variant.width, height: variant.height, fit: 'fill' })
      .flatten({ background: '#ffffff' });
    return (variant.format === 'webp' ? picture.webp(webp) : picture.jpeg(jpeg)).toBuffer();
  });
  return file;
}
