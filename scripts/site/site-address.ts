import { UsageError } from '../terminal/command-line.ts';
import type { SiteAddress } from './render-site.ts';

/**
 * Where the site will be published: --site, else the address in site.md, else the root of a host nobody named.
 * Throws a UsageError where --site is no web address; the one in site.md is checked with the content.
 */
export function siteAddress(given: string | undefined, written: string | null): SiteAddress {
  const url = URL.parse(given ?? written ?? '');
  if (
    given !== undefined &&
    (url === null || !/^https?:$/.test(url.protocol) || url.search !== '' || url.hash !== '')
  )
    throw new UsageError(
      `The option --site takes the web address the site will have, such as https://club.example/duration/, ` +
        `but "${given}" was given.`,
    );
  if (url === null || !/^https?:$/.test(url.protocol)) return { origin: null, base: '/' };
  return { origin: url.origin, base: url.pathname.replace(/\/*$/, '/') };
}
