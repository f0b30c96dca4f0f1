import type { ReadPhoto } from '../entries/folder/content.ts';
import { photoVariants } from '../publish/photo-variants.ts';

/** Side of the picture in a tab, and of the one on a telephone's first screen, in pixels. Common practice, no source. */
export const tabSize = 32;
export const touchSize = 180;

/** One picture that stands for the site outside its pages. */
export interface SiteIcon {
  readonly rel: 'icon' | 'apple-touch-icon';
  readonly type: string;
  /** As the attribute says it. */
  readonly sizes: string;
  /** Site path. */
  readonly path: string;
}

/** The club's logo where it is square and large enough, else the site's own mark. */
export function siteIcons(logo: ReadPhoto | null): SiteIcon[] {
  if (logo === null || logo.width !== logo.height || logo.width < touchSize)
    return [
      { rel: 'icon', type: 'image/svg+xml', sizes: 'any', path: '/assets/mark.svg' },
      { rel: 'icon', type: 'image/png', sizes: square(tabSize), path: `/assets/mark-${tabSize}.png` },
      {
        rel: 'apple-touch-icon',
        type: 'image/png',
        sizes: square(touchSize),
        path: `/assets/mark-${touchSize}.png`,
      },
    ];
  const plain = photoVariants(logo).find(({ format }) => format === 'jpeg')!;
  return (['icon', 'apple-touch-icon'] as const).map((rel) => ({
    rel,
    type: 'image/jpeg',
    sizes: square(plain.width),
    path: plain.path,
  }));
}

function square(side: number): string {
  return `${side}x${side}`;
}
