export type PictureFormat = 'JPEG' | 'PNG' | 'WebP' | 'AVIF';

const extensions: Readonly<Record<string, PictureFormat>> = {
  jpg: 'JPEG',
  jpeg: 'JPEG',
  png: 'PNG',
  webp: 'WebP',
  avif: 'AVIF',
};

/** The format a file name promises; null for a name that is not that of a picture. */
export function formatByName(file: string): PictureFormat | null {
  const extension = /\.([a-z]+)$/i.exec(file)?.[1]?.toLowerCase() ?? '';
  return Object.hasOwn(extensions, extension) ? (extensions[extension] ?? null) : null;
}

/**
 * The format the first bytes tell: JPEG (ITU-T T.81, SOI and a marker), PNG (ISO/IEC 15948, 5.2), WebP (RFC 9649, 2.4),
 * AVIF (ISO/IEC 23000-22, brand avif or avis). Null for anything else.
 */
export function formatByContent(bytes: Uint8Array): PictureFormat | null {
  if (bytes[0] === 0xff && bytes[1] === 0xd8 && bytes[2] === 0xff) return 'JPEG';
  if (latin(bytes, 0, 8) === '\x89PNG\r\n\x1a\n') return 'PNG';
  if (latin(bytes, 0, 4) === 'RIFF' && latin(bytes, 8, 12) === 'WEBP') return 'WebP';
  if (latin(bytes, 4, 8) === 'ftyp' && /avi[fs]/.test(latin(bytes, 8, Math.min(64, numberAt(bytes, 0)))))
    return 'AVIF';
  return null;
}

/** Whether the end of the file is there, as far as its own structure tells without decoding it. */
export function isWhole(bytes: Uint8Array, format: PictureFormat): boolean {
  if (format === 'JPEG')
    return latin(bytes, Math.max(0, bytes.length - 65_536), bytes.length).includes('\xff\xd9');
  if (format === 'PNG') return latin(bytes, Math.max(0, bytes.length - 1024), bytes.length).includes('IEND');
  if (format === 'WebP') return littleNumberAt(bytes, 4) + 8 <= bytes.length + 1;
  return boxesFit(bytes);
}

/** Walks the top boxes of an ISO base media file; the last one must end within the file. */
function boxesFit(bytes: Uint8Array): boolean {
  let at = 0;
  while (at + 8 <= bytes.length) {
    const size = numberAt(bytes, at);
    if (size === 0) return true;
    if (size === 1) return at + numberAt(bytes, at + 12) <= bytes.length;
    if (size < 8) return false;
    at += size;
  }
  return at <= bytes.length;
}

function numberAt(bytes: Uint8Array, at: number): number {
  return (
    (bytes[at] ?? 0) * 0x1000000 +
    ((bytes[at + 1] ?? 0) << 16) +
    ((bytes[at + 2] ?? 0) << 8) +
    (bytes[at + 3] ?? 0)
  );
}

function littleNumberAt(bytes: Uint8Array, at: number): number {
  return (
    (bytes[at + 3] ?? 0) * 0x1000000 +
    ((bytes[at + 2] ?? 0) << 16) +
    ((bytes[at + 1] ?? 0) << 8) +
    (bytes[at] ?? 0)
  );
}

function latin(bytes: Uint8Array, from: number, to: number): string {
  let text = '';
  for (let at = from; at < Math.min(to, bytes.length); at++) text += String.fromCharCode(bytes[at] ?? 0);
  return text;
}
