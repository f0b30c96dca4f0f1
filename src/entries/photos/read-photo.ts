import { createHash } from 'node:crypto';
import sharp, { type Metadata } from 'sharp';
import type { ProblemFields } from '../problems/make-problem.ts';
import type { ProblemCode } from '../problems/problem-codes.ts';
import { limits } from '../source/limits.ts';
import { exifHasLocation, iptcHasLocation, xmpHasLocation } from './photo-location.ts';
import type { PhotoFault, PhotoReading } from './photo-reading.ts';
import { formatByContent, formatByName, isWhole, type PictureFormat } from './picture-format.ts';

/** What the decoder calls the formats accepted: it decides by itself what it reads, and is to read nothing else. */
const decoders: Readonly<Record<PictureFormat, string>> = {
  JPEG: 'jpeg',
  PNG: 'png',
  WebP: 'webp',
  AVIF: 'heif',
};

/** A copy 1,600 pixels wide is then no higher than a WebP can be (16,383 pixels; RFC 9649, 3.1). */
const mostTimesAsHigh = 10;

const accepted = 'JPEG, PNG, WebP or AVIF, by content as well as by name';

/** What its size alone says of a picture, before it is read; null where nothing. */
export function tooManyBytes(file: string, bytes: number): PhotoFault | null {
  if (bytes <= limits.photoBytes) return null;
  const message = `"${file}" is ${megabytes(bytes)} MB; at most ${megabytes(limits.photoBytes)} MB are accepted. Save it smaller; 2,000 pixels across are plenty.`;
  return {
    code: 'photo-too-large',
    fields: { message, found: `${bytes} bytes`, accepted: `at most ${limits.photoBytes} bytes` },
  };
}

/**
 * Reads a picture without decoding it: whether its content is of the format its name says, whole, and within the limits; its
 * size turned upright; whether it tells where it was taken. Never throws for any bytes.
 */
export async function readPhoto(file: string, bytes: Uint8Array): Promise<PhotoReading> {
  const tooLarge = tooManyBytes(file, bytes.length);
  if (tooLarge !== null) return refused(tooLarge.code, tooLarge.fields);
  const [named, content] = [formatByName(file), formatByContent(bytes)];
  if (content === null || content !== named) {
    const is = content === null ? 'not a picture of any format accepted' : `a ${content} picture`;
    const message = `"${file}" is ${is} by its content; save it as ${named ?? 'JPEG'}, or name it after what it is.`;
    return refused('photo-format', { message, found: content, accepted });
  }
  // The decoder's own limit is lifted: only the head is read here, and ours is told in a sentence.
  const metadata = await sharp(bytes, { limitInputPixels: false })
    .metadata()
    .catch(() => null);
  if (metadata === null || metadata.format !== decoders[content] || !isWhole(bytes, content))
    return refused('photo-unreadable', {
      message: `"${file}" cannot be read as a ${content} picture; it is damaged or cut short. Copy it from the camera again.`,
      accepted,
    });
  const { width, height } = metadata.autoOrient;
  if (width * height > limits.photoPixels) {
    const message = `"${file}" has ${width} × ${height} pixels; at most ${limits.photoPixels / 1e6} million are accepted. Save it smaller.`;
    return refused('photo-too-large', {
      message,
      found: `${width} × ${height}`,
      accepted: `at most ${limits.photoPixels / 1e6} million pixels`,
    });
  }
  if (height > mostTimesAsHigh * width) {
    const message = `"${file}" is ${width} × ${height} pixels, more than ${mostTimesAsHigh} times as high as wide. Cut it to what is to be seen.`;
    return refused('photo-too-large', {
      message,
      found: `${width} × ${height}`,
      accepted: `at most ${mostTimesAsHigh} times as high as wide`,
    });
  }
  const hash = createHash('sha256').update(bytes).digest('hex').slice(0, 16);
  return { picture: { hash, width, height }, faults: remarks(file, bytes, metadata) };
}

function remarks(file: string, bytes: Uint8Array, metadata: Metadata): PhotoFault[] {
  const faults: PhotoFault[] = [];
  if (bytes.length > limits.photoBytesUnusual)
    faults.push({
      code: 'photo-large',
      fields: {
        message: `"${file}" is ${megabytes(bytes.length)} MB and stays in the repository for good; 2,000 pixels across are plenty.`,
      },
    });
  const located =
    (metadata.exif !== undefined && exifHasLocation(metadata.exif)) ||
    (metadata.iptc !== undefined && iptcHasLocation(metadata.iptc)) ||
    (metadata.xmp !== undefined && xmpHasLocation(metadata.xmp.toString('utf8')));
  if (located)
    faults.push({
      code: 'photo-location',
      fields: {
        message: `"${file}" tells where it was taken. The site leaves that out, but the original stays in the repository’s history: save it without its location before you send it. Where it has been sent already, a new copy does not help: ask whoever keeps the repository to take the original out of its history.`,
      },
    });
  return faults;
}

function refused(code: ProblemCode, fields: ProblemFields): PhotoReading {
  return { picture: null, faults: [{ code, fields }] };
}

function megabytes(bytes: number): string {
  return (bytes / 1e6).toFixed(1).replace(/\.0$/, '');
}
