import type { Almanac } from '../almanac/almanac.ts';
import { words } from '../words.ts';
import { boardPath, comparePath, enterPath } from './link.ts';

/** One way of the site's menu. */
export interface MenuWay {
  readonly label: string;
  /** Site path. */
  readonly to: string;
}

/** The menu of the site: what is there, and nothing that would lead to an empty page. */
export function siteMenu({ challenges, featured, pages, news, batches, builders }: Almanac): MenuWay[] {
  const shown = challenges.find((record) => record.challenge.id === featured);
  const ordered = [...pages].sort(
    (a, b) =>
      (a.page.order ?? Number.MAX_SAFE_INTEGER) - (b.page.order ?? Number.MAX_SAFE_INTEGER) ||
      (a.page.id < b.page.id ? -1 : 1),
  );
  return [
    ...(shown === undefined ? [] : [{ label: words.pages.board, to: boardPath(shown.challenge.id) }]),
    { label: words.pages.challenges, to: '/challenges/' },
    { label: words.compare.title, to: comparePath() },
    { label: words.enter.menu, to: enterPath },
    ...(builders.length === 0 ? [] : [{ label: words.pages.builders, to: '/builders/' }]),
    ...(batches.length === 0 ? [] : [{ label: words.pages.rubber, to: '/rubber/' }]),
    { label: words.pages.figures, to: '/figures/' },
    ...(news.length === 0 ? [] : [{ label: words.pages.news, to: '/news/' }]),
    ...ordered.map(({ page }) => ({ label: page.title, to: `/${page.id}/` })),
  ];
}
