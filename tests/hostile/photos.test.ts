import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { crc32, deflateSync } from 'node:zlib';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { iptcHasLocation } from '../../src/entries/photos/photo-location.ts';
import { readPhoto } from '../../src/entries/photos/read-photo.ts';
import { encodePhoto } from '../../src/publish/encode-photo.ts';
import { photoVariants } from '../../src/publish/photo-variants.ts';

const codesOf = async (file: string, bytes: Uint8Array) =>
  (await readPhoto(file, bytes)).faults.map(({ code }) => code);

const ink = { create: { width: 60, height: 40, channels: 3, background: '#8a3b12' } } as const;

/** A PNG of one grey level and any size, written by hand (ISO/IEC 15948, 5.3 and 11.2.2); of a huge one only the first rows. */
function emptyPng(width: number, height: number): Buffer {
  const head = Buffer.alloc(13);
  head.writeUInt32BE(width, 0);
  head.writeUInt32BE(height, 4);
  head.set([1, 0, 0, 0, 0], 8);
  const rows = Buffer.alloc(Math.min(height * (1 + Math.ceil(width / 8)), 2_000_000));
  return Buffer.concat([
    Buffer.from('\x89PNG\r\n\x1a\n', 'latin1'),
    chunk('IHDR', head),
    chunk('IDAT', deflateSync(rows)),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}

function chunk(type: string, data: Buffer): Buffer {
  const body = Buffer.concat([Buffer.from(type, 'latin1'), data]);
  const [length, sum] = [Buffer.alloc(4), Buffer.alloc(4)];
  length.writeUInt32BE(data.length);
  sum.writeUInt32BE(crc32(body));
  return Buffer.concat([length, body, sum]);
}

describe('a file that is no photo', () => {
  it.each([
    ['a drawing with a script', '<svg xmlns="http://www.w3.org/2000/svg"><script>alert(1)</script></svg>'],
    ['a page', '<!doctype html><script>alert(1)</script>'],
    ['an archive', 'PK\x03\x04'],
    ['a document', '%PDF-1.7\n'],
    ['nothing', ''],
    [
      'a drawing behind the mark of a JPEG',
      '\xff\xd8\xff<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"/>\xff\xd9',
    ],
    [
      'a drawing behind the mark of a WebP',
      'RIFF\x10\x00\x00\x00WEBP<svg xmlns="http://www.w3.org/2000/svg"/>',
    ],
  ])('is refused: %s', async (_, content) => {
    const bytes = Buffer.from(content, 'latin1');
    for (const file of ['a.jpg', 'a.png', 'a.webp', 'a.avif']) {
      const { picture, faults } = await readPhoto(file, bytes);
      expect(picture).toBeNull();
      expect(['photo-format', 'photo-unreadable']).toContain(faults[0]?.code);
    }
  });
});

describe('a picture made to exhaust the computer', () => {
  it('of 900 million pixels in few bytes is refused by its head alone', async () => {
    const bomb = emptyPng(30_000, 30_000);
    expect(bomb.length).toBeLessThan(60_000);
    const before = process.memoryUsage().rss;
    expect(await codesOf('a.png', bomb)).toEqual(['photo-too-large']);
    expect(process.memoryUsage().rss - before).toBeLessThan(200_000_000);
  });

  it('a thousand times as high as wide is refused, before the encoder would', async () => {
    expect(await codesOf('a.png', emptyPng(10, 10_000))).toEqual(['photo-too-large']);
    expect(await codesOf('a.png', emptyPng(100, 1000))).toEqual([]);
  });

  it('of a thousand frames is taken by its first', async () => {
    const frames = await sharp({ create: { ...ink.create, height: 40 * 1000, pageHeight: 40 } })
      .webp({ loop: 0, effort: 0 })
      .toBuffer();
    const { picture } = await readPhoto('a.webp', frames);
    expect(picture).toMatchObject({ width: 60, height: 40 });
  });
});

describe('what is published of a photo', () => {
  let folder = '';
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'hostile-photos-'));
    mkdirSync(join(folder, 'cache'));
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  const secret = 'Hidden place 52.4';
  const exif = {
    IFD0: { Copyright: secret, ImageDescription: secret, Orientation: '6' },
    IFD3: {
      GPSLatitude: '52/1 24/1 0/1',
      GPSLatitudeRef: 'N',
      GPSLongitude: '0/1 15/1 0/1',
      GPSLongitudeRef: 'E',
    },
  };
  const xmp = `<x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#"><rdf:Description xmlns:exif="http://ns.adobe.com/exif/1.0/" exif:GPSLatitude="${secret}"/></rdf:RDF></x:xmpmeta>`;

  const marked = () =>
    sharp(ink).withExif(exif).withXmp(xmp).withIccProfile('p3').withMetadata({ orientation: 6 });
  const originals = {
    'a.jpg': () => marked().jpeg().toBuffer(),
    'a.png': () => marked().png().toBuffer(),
    'a.webp': () => marked().webp().toBuffer(),
    'a.avif': () => marked().avif().toBuffer(),
    'cmyk.jpg': () => sharp(ink).toColourspace('cmyk').withExif(exif).jpeg().toBuffer(),
    'deep.png': () => sharp(ink).toColourspace('rgb16').withExif(exif).png().toBuffer(),
    'alpha.png': () => sharp(ink).ensureAlpha(0.3).withExif(exif).png().toBuffer(),
    'grey.jpg': () => sharp(ink).greyscale().withExif(exif).jpeg().toBuffer(),
  };

  // The names under which JPEG and WebP carry Exif, XMP, a colour profile and Photoshop's blocks (T.81 application markers,
  // RFC 9649, 2.7), and the words of the original.
  const traces = [
    'Exif\0',
    'EXIF',
    'XMP ',
    'http://ns.adobe.com',
    'ICC_PROFILE',
    'ICCP',
    'Photoshop',
    '8BIM',
    secret,
  ];

  it.each(Object.entries(originals))(
    'carries nothing of the metadata of %s, and stands upright',
    async (file, make) => {
      const bytes = await make();
      expect(bytes.includes(secret)).toBe(true);
      writeFileSync(join(folder, file), bytes);
      const { picture, faults } = await readPhoto(file, bytes);
      if (picture === null) throw new Error(JSON.stringify(faults));
      expect(faults.map(({ code }) => code)).toEqual(['photo-location']);
      for (const variant of photoVariants(picture)) {
        const made = readFileSync(await encodePhoto(join(folder, file), variant, join(folder, 'cache')));
        const {
          width,
          height,
          exif: e,
          xmp: x,
          icc,
          iptc,
          orientation,
          space,
          depth,
          hasAlpha,
        } = await sharp(made).metadata();
        expect([width, height]).toEqual([variant.width, variant.height]);
        expect([e, x, icc, iptc, orientation]).toEqual([
          undefined,
          undefined,
          undefined,
          undefined,
          undefined,
        ]);
        expect([depth, hasAlpha]).toEqual(['uchar', false]);
        expect(['srgb', 'b-w']).toContain(space);
        expect(traces.filter((trace) => made.includes(trace))).toEqual([]);
      }
    },
  );

  it('of a photo cut short is nothing: it is refused, or fails by itself', async () => {
    const whole = await sharp({
      create: { ...ink.create, width: 400, height: 400, noise: { type: 'gaussian', mean: 120, sigma: 40 } },
    })
      .jpeg()
      .toBuffer();
    // The middle is missing, the end is there: only decoding tells.
    const holed = Buffer.concat([whole.subarray(0, 3000), whole.subarray(-2)]);
    writeFileSync(join(folder, 'holed.jpg'), holed);
    const { picture } = await readPhoto('holed.jpg', holed);
    const [variant] = photoVariants(picture ?? { hash: 'f'.repeat(16), width: 400, height: 400 });
    if (variant === undefined) throw new Error('no copy');
    await expect(encodePhoto(join(folder, 'holed.jpg'), variant, join(folder, 'cache'))).rejects.toThrow();
    expect(
      readdirSync(join(folder, 'cache'), { recursive: true }).filter((name) =>
        String(name).includes(variant.path.slice(8, 24)),
      ),
    ).toEqual([]);
  });
});

describe('places in IPTC data', () => {
  // IPTC-IIM 4.2, 1.5: a data set is 1C, record, number, two bytes of length, then the value.
  it('are found by the numbers of their data sets', () => {
    expect(iptcHasLocation(Uint8Array.of(0x1c, 2, 90, 0, 1, 65))).toBe(true);
    expect(iptcHasLocation(Uint8Array.of(0x1c, 2, 5, 0, 1, 65))).toBe(false);
    expect(iptcHasLocation(Uint8Array.of(0x1c))).toBe(false);
  });
});
