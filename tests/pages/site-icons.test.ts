import { describe, expect, it } from 'vitest';
import { siteIcons } from '../../src/components/site-icons.ts';

const logo = { file: 'logo.png', alt: '', source: 'logo.png', hash: '0123456789abcdef' };

describe('what stands for the site in a tab', () => {
  it.each([
    ['no logo', null],
    ['a logo that is wider than high', { ...logo, width: 600, height: 200 }],
    ['a square logo too small for a telephone', { ...logo, width: 64, height: 64 }],
  ])('is its own mark with %s', (_, given) => {
    expect(siteIcons(given).map(({ rel, sizes, path }) => [rel, sizes, path])).toEqual([
      ['icon', 'any', '/assets/mark.svg'],
      ['icon', '32x32', '/assets/mark-32.png'],
      ['apple-touch-icon', '180x180', '/assets/mark-180.png'],
    ]);
  });

  it('is a square logo, in a copy that the build writes', () => {
    expect(siteIcons({ ...logo, width: 2000, height: 2000 })).toEqual([
      { rel: 'icon', type: 'image/jpeg', sizes: '960x960', path: '/photos/0123456789abcdef-960.jpg' },
      {
        rel: 'apple-touch-icon',
        type: 'image/jpeg',
        sizes: '960x960',
        path: '/photos/0123456789abcdef-960.jpg',
      },
    ]);
  });
});
