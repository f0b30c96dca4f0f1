import { mkdirSync, mkdtempSync, readdirSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import sharp from 'sharp';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Almanac } from '../../src/almanac/almanac.ts';
import type { ReadPhoto } from '../../src/entries/folder/content.ts';
import { preparePhotos, withoutPhotos, writePhotos } from '../../src/publish/write-photos.ts';
import { almanac, challengeRecord, entryRecord } from './sample-almanac.ts';

let folder = '';
const content = () => join(folder, 'content');
const cache = () => join(folder, 'cache');

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'last-turn-photos-'));
  mkdirSync(content());
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

function withPhotos(photos: readonly ReadPhoto[]): Almanac {
  const files = photos.map(({ source }) => ({ file: source, fate: 'published' as const, why: null }));
  return {
    ...almanac,
    files,
    challenges: [{ ...challengeRecord, entries: [{ ...entryRecord, photos }] }],
  };
}

// A picture lying on its side, as a camera writes it: 40 wide, 20 high, EXIF orientation 6 (turn clockwise; Exif 2.32,
// tag 0x0112), with a place in its metadata.
async function sidewaysPhoto(): Promise<ReadPhoto> {
  const bytes = await sharp({ create: { width: 40, height: 20, channels: 3, background: '#336699' } })
    .withExif({ IFD0: { Copyright: 'somebody' }, IFD3: { GPSLatitudeRef: 'N' } })
    .withMetadata({ orientation: 6 })
    .jpeg()
    .toBuffer();
  writeFileSync(join(content(), 'side.jpg'), bytes);
  return { file: 'side.jpg', alt: 'x', source: 'side.jpg', hash: 'a'.repeat(16), width: 20, height: 40 };
}

describe('publishing the logo', () => {
  it('makes its copies, and does without one that cannot be decoded', async () => {
    const logo = await sidewaysPhoto();
    const prepared = await preparePhotos({ ...almanac, logo }, { content: content(), cache: cache() });
    expect(prepared.files.map((file) => basename(file))).toEqual([
      `${logo.hash}-20.jpg`,
      `${logo.hash}-20.webp`,
    ]);
    writeFileSync(join(content(), 'side.jpg'), 'no picture');
    const broken = await preparePhotos(
      { ...almanac, logo },
      { content: content(), cache: join(folder, 'new') },
    );
    expect([...broken.failed.keys()]).toEqual(['side.jpg']);
    expect(withoutPhotos({ ...almanac, logo }, broken.failed).logo).toBeNull();
    expect(withoutPhotos({ ...almanac, logo }, new Map([['other.jpg', 'x']])).logo).toEqual(logo);
  });
});

describe('publishing photos', () => {
  it('turns them upright and drops all metadata', async () => {
    const photo = await sidewaysPhoto();
    expect((await sharp(join(content(), 'side.jpg')).metadata()).exif).toBeDefined();
    const prepared = await preparePhotos(withPhotos([photo]), { content: content(), cache: cache() });
    const out = join(folder, 'out');
    await writePhotos(prepared, out);
    expect(readdirSync(join(out, 'photos')).sort()).toEqual([
      `${photo.hash}-20.jpg`,
      `${photo.hash}-20.webp`,
    ]);
    for (const name of readdirSync(join(out, 'photos'))) {
      const { width, height, exif, icc, xmp, orientation } = await sharp(
        join(out, 'photos', name),
      ).metadata();
      expect({ width, height, exif, icc, xmp, orientation }).toEqual({ width: 20, height: 40 });
    }
  });

  it('takes an unchanged photo from the cache', async () => {
    const photo = await sidewaysPhoto();
    const folders = { content: content(), cache: cache() };
    const once = await preparePhotos(withPhotos([photo]), folders);
    const times = once.files.map((file) => statSync(file).mtimeMs);
    rmSync(join(content(), 'side.jpg'));
    const again = await preparePhotos(withPhotos([photo]), folders);
    expect(again).toEqual(once);
    expect(again.files.map((file) => statSync(file).mtimeMs)).toEqual(times);
  });

  it('goes on without a photo that cannot be decoded', async () => {
    const good = await sidewaysPhoto();
    writeFileSync(join(content(), 'bad.jpg'), 'no picture');
    const bad = { ...good, file: 'bad.jpg', source: 'bad.jpg', hash: 'b'.repeat(16) };
    const read = withPhotos([bad, good]);
    const prepared = await preparePhotos(read, { content: content(), cache: cache() });
    expect([...prepared.failed.keys()]).toEqual(['bad.jpg']);
    const rest = withoutPhotos(read, prepared.failed);
    expect(rest.challenges[0]?.entries[0]?.photos).toEqual([good]);
    expect(rest.files.map(({ fate }) => fate)).toEqual(['left-out', 'published']);
  });
});
