import type { Almanac } from '../almanac/almanac.ts';
import type { Happening } from '../almanac/happening.ts';
import { happeningsOf } from '../almanac/happenings.ts';
import { type AtomEntry, atomText } from '../publish/feed/atom.ts';
import { words } from '../words.ts';
import { happeningTold } from './happening-told.ts';
import { feedPath, link } from './link.ts';

/** Readers of feeds ask again and again: the newest are enough. */
const most = 60;

/** Stands in ids where a site has no address yet (RFC 2606 keeps this name free for ever). */
const nowhere = 'https://site.invalid';

/**
 * The feed of the whole site.
 *
 * @param origin where the site is published, such as `https://club.example`; null where nobody said: links are then
 * relative to that place
 */
export function siteFeed(almanac: Almanac, origin: string | null): string {
  const { site } = almanac;
  const address = (path: string) => `${origin ?? ''}${link(path)}`;
  const name = (id: string) => `${origin ?? nowhere}${link(feedPath)}${id === '' ? '' : `#${id}`}`;
  const entryOf = (happening: Happening): AtomEntry => {
    const { title, path, people } = happeningTold(almanac, happening);
    const isNews = happening.kind === 'news';
    return {
      id: name(happening.id),
      title,
      updated: happening.date,
      link: address(path),
      authors: people,
      summary: isNews ? happening.post.summary : null,
      html: isNews && happening.html !== '' ? happening.html : null,
    };
  };
  return atomText({
    id: name(''),
    title: words.feed.title(site.title),
    author: site.club ?? site.title,
    self: address(feedPath),
    page: address('/'),
    language: words.language,
    entries: happeningsOf(almanac).slice(0, most).map(entryOf),
  });
}
