import { createHash } from 'node:crypto';
import { crc32 } from 'node:zlib';
import * as fc from 'fast-check';
import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { exifHasLocation, xmpHasLocation } from '../../../src/entries/photos/photo-location.ts';
import { formatByContent, formatByName, isWhole } from '../../../src/entries/photos/picture-format.ts';
import { readPhoto, tooManyBytes } from '../../../src/entries/photos/read-photo.ts';

/** A picture encoded by libvips: 30 wide, 20 high. */
function picture() {
  return sharp({ create: { width: 30, height: 20, channels: 3, background: '#8a3b12' } });
}

const codesOf = (reading: Awaited<ReturnType<typeof readPhoto>>) => reading.faults.map(({ code }) => code);

describe('a picture', () => {
  it.each([
    ['a.jpg', 'jpeg', 'JPEG'],
    ['a.PNG', 'png', 'PNG'],
    ['a.webp', 'webp', 'WebP'],
    ['a.avif', 'avif', 'AVIF'],
  ] as const)('in %s is read, whole and of the format its name says', async (file, format, name) => {
    const bytes = await picture().toFormat(format).toBuffer();
    expect(formatByName(file)).toBe(name);
    expect(formatByContent(bytes)).toBe(name);
    expect(isWhole(bytes, name)).toBe(true);
    const reading = await readPhoto(file, bytes);
    expect(reading.faults).toEqual([]);
    expect(reading.picture).toEqual({
      hash: createHash('sha256').update(bytes).digest('hex').slice(0, 16),
      width: 30,
      height: 20,
    });
  });

  it('that lies on its side has the size it has turned upright (Exif orientation 6)', async () => {
    const bytes = await picture().jpeg().withMetadata({ orientation: 6 }).toBuffer();
    expect((await readPhoto('a.jpg', bytes)).picture).toMatchObject({ width: 20, height: 30 });
  });

  it('of another format than its name says is refused', async () => {
    const reading = await readPhoto('a.jpg', await picture().png().toBuffer());
    expect(reading.picture).toBeNull();
    expect(reading.faults[0]).toMatchObject({
      code: 'photo-format',
      fields: {
        message: '"a.jpg" is a PNG picture by its content; save it as JPEG, or name it after what it is.',
      },
    });
    const drawing = Buffer.from('<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"/>');
    expect(codesOf(await readPhoto('a.png', drawing))).toEqual(['photo-format']);
  });

  it.each(['jpeg', 'png', 'webp', 'avif'] as const)('cut short as %s is refused', async (format) => {
    const noise = sharp({
      create: {
        width: 200,
        height: 200,
        channels: 3,
        background: 'red',
        noise: { type: 'gaussian', mean: 128, sigma: 30 },
      },
    });
    const bytes = await noise.toFormat(format).toBuffer();
    const file = `a.${format}`;
    expect(codesOf(await readPhoto(file, bytes))).toEqual([]);
    expect(codesOf(await readPhoto(file, bytes.subarray(0, bytes.length / 2)))).toEqual(['photo-unreadable']);
  });

  it('beyond 60 megapixels or 15 MB is refused', async () => {
    const large = await sharp({ create: { width: 8000, height: 7501, channels: 3, background: 'white' } })
      .png()
      .toBuffer();
    const reading = await readPhoto('a.png', large);
    expect(codesOf(reading)).toEqual(['photo-too-large']);
    expect(reading.faults[0]?.fields.message).toBe(
      '"a.png" has 8000 × 7501 pixels; at most 60 million are accepted. Save it smaller.',
    );
    expect(tooManyBytes('a.png', 15_000_000)).toBeNull();
    expect(tooManyBytes('a.png', 15_000_001)?.code).toBe('photo-too-large');
  });

  it('above 3 MB is accepted with a warning', async () => {
    const bytes = await picture().png().toBuffer();
    const padded = Buffer.concat([bytes.subarray(0, 33), chunkOf(3_000_000), bytes.subarray(33)]);
    const reading = await readPhoto('a.png', padded);
    expect(reading.picture).not.toBeNull();
    expect(codesOf(reading)).toEqual(['photo-large']);
  });

  it('that tells where it was taken is accepted with a warning', async () => {
    const gps = {
      GPSLatitude: '52/1 24/1 0/1',
      GPSLatitudeRef: 'N',
      GPSLongitude: '0/1 15/1 0/1',
      GPSLongitudeRef: 'E',
    };
    const bytes = await picture().jpeg().withExif({ IFD3: gps }).toBuffer();
    const reading = await readPhoto('a.jpg', bytes);
    expect(reading.picture).not.toBeNull();
    expect(reading.faults[0]).toMatchObject({
      code: 'photo-location',
      fields: {
        message:
          '"a.jpg" tells where it was taken. The site leaves that out, but the original stays in the repository’s history: save it without its location before you send it. Where it has been sent already, a new copy does not help: ask whoever keeps the repository to take the original out of its history.',
      },
    });
    const other = await picture()
      .jpeg()
      .withExif({ IFD0: { Copyright: 'nobody' } })
      .toBuffer();
    expect((await readPhoto('a.jpg', other)).faults).toEqual([]);
  });

  it('of any bytes never throws', async () => {
    const heads = [
      '\xff\xd8\xff',
      '\x89PNG\r\n\x1a\n',
      'RIFF\x00\x00\x00\x00WEBP',
      '\x00\x00\x00\x18ftypavif',
      '',
    ];
    const anything = fc.tuple(fc.constantFrom(...heads), fc.uint8Array({ maxLength: 200 }));
    await fc.assert(
      fc.asyncProperty(
        anything,
        fc.constantFrom('a.jpg', 'a.png', 'a.webp', 'a.avif'),
        async ([head, rest], file) => {
          const { picture: read, faults } = await readPhoto(
            file,
            Buffer.concat([Buffer.from(head, 'latin1'), rest]),
          );
          expect(read === null).toBe(faults.length > 0);
        },
      ),
      { seed: 3, numRuns: 200 },
    );
  });
});

describe('location in metadata', () => {
  it('is found in XMP', () => {
    expect(xmpHasLocation('<rdf:Description exif:GPSLatitude="52,24N"/>')).toBe(true);
    expect(xmpHasLocation('<rdf:Description tiff:Make="none"/>')).toBe(false);
  });

  it('is looked for in damaged Exif without throwing', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 60 }), (bytes) => {
        expect(typeof exifHasLocation(bytes)).toBe('boolean');
      }),
      { seed: 2 },
    );
  });
});

/** A private ancillary PNG chunk (ISO/IEC 15948, 5.3) of so many zero bytes, with its CRC. */
function chunkOf(length: number): Buffer {
  const body = Buffer.concat([Buffer.from('paDd', 'latin1'), Buffer.alloc(length)]);
  const head = Buffer.alloc(4);
  head.writeUInt32BE(length);
  const tail = Buffer.alloc(4);
  tail.writeUInt32BE(crc32(body));
  return Buffer.concat([head, body, tail]);
}
