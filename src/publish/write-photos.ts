import { copyFile, mkdir } from 'node:fs/promises';
import { basename, join } from 'node:path';
import type { Almanac } from '../almanac/almanac.ts';
import type { ReadPhoto } from '../entries/folder/content.ts';
import { encodePhoto } from './encode-photo.ts';
import { photoVariants } from './photo-variants.ts';

/** The published copies of all photos, made and waiting in the cache. */
export interface PreparedPhotos {
  /** Absolute paths of the copies; their names are those that pages point to. */
  readonly files: readonly string[];
  /** Originals that can't be decoded: path relative to the content folder → what the decoder said. */
  readonly failed: ReadonlyMap<string, string>;
}

/** How many pictures are encoded at once; each uses several threads of its own. */
const atOnce = 2;

/**
 * Makes every published copy of every photo, or finds it in the cache. A photo that can't be decoded costs only
 * itself: it is named in `failed` and the build goes on without it.
 */
export async function preparePhotos(
  almanac: Almanac,
  folders: { readonly content: string; readonly cache: string },
): Promise<PreparedPhotos> {
  const waiting = onePerPicture(almanac);
  const files: string[] = [];
  const failed = new Map<string, string>();
  async function work(): Promise<void> {
    for (let photo = waiting.shift(); photo !== undefined; photo = waiting.shift()) {
      try {
        const original = join(folders.content, photo.source);
        for (const variant of photoVariants(photo))
          files.push(await encodePhoto(original, variant, folders.cache));
      } catch (error) {
        failed.set(photo.source, error instanceof Error ? error.message : String(error));
      }
    }
  }
  await Promise.all(Array.from({ length: atOnce }, work));
  return { files: files.sort(), failed };
}

/** Puts the prepared copies into the site that is being built. */
export async function writePhotos(prepared: PreparedPhotos, out: string): Promise<void> {
  if (prepared.files.length === 0) return;
  const folder = join(out, 'photos');
  await mkdir(folder, { recursive: true });
  for (const file of new Set(prepared.files)) await copyFile(file, join(folder, basename(file)));
}

/** The same almanac without the photos that could not be decoded; their files count as left out. */
export function withoutPhotos(almanac: Almanac, failed: ReadonlyMap<string, string>): Almanac {
  if (failed.size === 0) return almanac;
  return {
    ...almanac,
    logo: almanac.logo !== null && failed.has(almanac.logo.source) ? null : almanac.logo,
    challenges: almanac.challenges.map((record) => ({
      ...record,
      entries: record.entries.map((entry) => ({
        ...entry,
        photos: entry.photos.filter((photo) => !failed.has(photo.source)),
      })),
    })),
    files: almanac.files.map((account) =>
      failed.has(account.file)
        ? { ...account, fate: 'left-out' as const, why: 'the picture cannot be decoded' }
        : account,
    ),
  };
}

/** All pictures of the site. The same one in two entries is encoded once: its name comes from its bytes. */
function onePerPicture(almanac: Almanac): ReadPhoto[] {
  const byHash = new Map<string, ReadPhoto>();
  if (almanac.logo !== null) byHash.set(almanac.logo.hash, almanac.logo);
  for (const record of almanac.challenges)
    for (const entry of record.entries)
      for (const photo of entry.photos) if (!byHash.has(photo.hash)) byHash.set(photo.hash, photo);
  return [...byHash.values()];
}
