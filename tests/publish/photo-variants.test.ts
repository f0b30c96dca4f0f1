import { describe, expect, it } from 'vitest';
import { photoVariants } from '../../src/publish/photo-variants.ts';

const hash = '0123456789abcdef';

describe('the copies of a photo', () => {
  it('are three widths of WebP and one JPEG, named after the content', () => {
    expect(photoVariants({ hash, width: 4000, height: 3000 })).toEqual([
      { width: 480, height: 360, format: 'webp', path: `/photos/${hash}-480.webp` },
      { width: 960, height: 720, format: 'webp', path: `/photos/${hash}-960.webp` },
      { width: 1600, height: 1200, format: 'webp', path: `/photos/${hash}-1600.webp` },
      { width: 960, height: 720, format: 'jpeg', path: `/photos/${hash}-960.jpg` },
    ]);
  });

  it('are never larger than the photo', () => {
    const widths = (width: number) =>
      photoVariants({ hash, width, height: 100 }).map((variant) => variant.width);
    expect(widths(300)).toEqual([300, 300]);
    expect(widths(480)).toEqual([480, 480]);
    expect(widths(700)).toEqual([480, 700, 700]);
    expect(widths(1000)).toEqual([480, 960, 1000, 960]);
  });

  it('are at least one pixel high', () => {
    expect(photoVariants({ hash, width: 5000, height: 2 }).every(({ height }) => height >= 1)).toBe(true);
  });
});
