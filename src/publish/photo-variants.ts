import type { ReadPhoto } from '../entries/folder/content.ts';

/** One published copy of a photo. */
export interface PhotoVariant {
  readonly width: number;
  readonly height: number;
  readonly format: 'webp' | 'jpeg';
  /** Site path without the base path, such as `/photos/0123456789abcdef-960.webp`. */
  readonly path: string;
}

/** Widths in pixels that a page asks for: a phone, a column of text, the whole width of a screen. */
const widths = [480, 960, 1600];

/** The width of the one JPEG, for readers whose browser shows no WebP. */
const fallbackWidth = 960;

/**
 * The copies of a photo that pages point to and that the build writes, smallest first, the JPEG last. A photo is never
 * enlarged: one narrower than the widest copy ends at its own width.
 */
export function photoVariants(photo: Pick<ReadPhoto, 'hash' | 'width' | 'height'>): PhotoVariant[] {
  const widest = Math.min(photo.width, widths[widths.length - 1] ?? photo.width);
  const asked = [...widths.filter((width) => width < widest), widest];
  return [
    ...asked.map((width) => variant(photo, width, 'webp')),
    variant(photo, Math.min(photo.width, fallbackWidth), 'jpeg'),
  ];
}

function variant(
  photo: Pick<ReadPhoto, 'hash' | 'width' | 'height'>,
  width: number,
  format: 'webp' | 'jpeg',
): PhotoVariant {
  const height = Math.max(1, Math.round((photo.height * width) / photo.width));
  const ending = format === 'webp' ? 'webp' : 'jpg';
  return { width, height, format, path: `/photos/${photo.hash}-${width}.${ending}` };
}
