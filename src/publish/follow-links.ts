import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { addressOf } from './addresses.ts';
import type { GateFault } from './gate-fault.ts';
import { type GlancedPage, scanPage } from './scan-page.ts';
import type { WrittenText } from './written-text.ts';

/** Follows the links of a built site, page by page. */
export interface LinkFollower {
  /** The links of one page that lead nowhere, with what is wrong; those that people wrote are not among them. */
  readonly brokenOn: (file: string, page: GlancedPage) => ReadonlyMap<string, GateFault>;
  /** Fragments of other pages that are not there; asked once all pages were seen. */
  readonly missingFragments: () => Promise<GateFault[]>;
}

interface WantedFragment {
  readonly target: string;
  readonly fragment: string;
  readonly link: string;
  /** The page it stands on. */
  readonly file: string;
}

/**
 * Begins to follow links.
 *
 * @param site its folder, its files (relative, with `/`) and its base path with a slash at both ends
 */
export function followLinks(
  site: { readonly folder: string; readonly files: readonly string[]; readonly base: string },
  written: WrittenText,
): LinkFollower {
  const wanted: WantedFragment[] = [];
  const ids = new Map<string, ReadonlySet<string>>();
  // Links from the root of the host mean the same on every page, and most pages share them.
  const sound = new Set<string>();
  const index = { base: site.base, addresses: new Set(site.files.map(addressOf)), wanted };
  return {
    brokenOn(file, page) {
      ids.set(file, page.ids);
      const broken = new Map<string, GateFault>();
      for (const link of page.links) {
        if (sound.has(link)) continue;
        const fault = followLink(link, file, page.ids, index);
        if (fault !== null) {
          if (!written.hasLink(link)) broken.set(link, fault);
        } else if (link.startsWith('/') && !link.includes('#')) sound.add(link);
      }
      return broken;
    },
    async missingFragments() {
      const faults: GateFault[] = [];
      for (const { target, fragment, link, file } of wanted) {
        if (ids.get(target)?.has(fragment) === true || written.hasLink(link)) continue;
        const { links } = scanPage(await readFile(join(site.folder, file), 'utf8'));
        if (!links.includes(link)) continue;
        const page = addressOf(file);
        faults.push({
          code: 'fragment-missing',
          page,
          message: `The page ${page} links to ${addressOf(target)}#${fragment}, and nothing there has that id.`,
        });
      }
      return faults;
    },
  };
}

/** Null where a link leads somewhere, or to another host. */
function followLink(
  link: string,
  file: string,
  ids: ReadonlySet<string>,
  site: { readonly base: string; readonly addresses: ReadonlySet<string>; readonly wanted: WantedFragment[] },
): GateFault | null {
  if (/^(?:[a-z][a-z0-9+.-]*:|\/\/)/i.test(link)) return null;
  const page = addressOf(file);
  const broken = (why: string): GateFault => ({
    code: 'link-broken',
    page,
    message: `The page ${page} links to ${link === '' ? 'an empty address' : link}, ${why}.`,
  });
  const [beforeFragment = '', fragment = ''] = split(link, '#');
  const path = split(beforeFragment, '?')[0] ?? '';
  if (path === '') {
    if (link === '') return broken('which leads nowhere');
    return fragment === '' || fragment === 'top' || ids.has(decoded(fragment))
      ? null
      : {
          code: 'fragment-missing',
          page,
          message: `The page ${page} links to #${fragment}, and nothing on it has that id.`,
        };
  }
  const target = resolved(path, `${site.base}${page.slice(1)}`);
  if (target === null) return broken('which is no address');
  if (!target.startsWith(site.base)) return broken(`which is outside the site's base path ${site.base}`);
  const address = `/${target.slice(site.base.length)}`;
  if (!site.addresses.has(address)) return broken('where there is nothing');
  if (fragment !== '' && address.endsWith('/')) {
    site.wanted.push({ target: `${address.slice(1)}index.html`, fragment: decoded(fragment), link, file });
  }
  return null;
}

function split(text: string, at: string): [string, string] {
  const index = text.indexOf(at);
  return index === -1 ? [text, ''] : [text.slice(0, index), text.slice(index + 1)];
}

function resolved(path: string, from: string): string | null {
  try {
    return decodeURIComponent(new URL(path, `https://site.invalid${from}`).pathname);
  } catch {
    return null;
  }
}

function decoded(fragment: string): string {
  try {
    return decodeURIComponent(fragment);
  } catch {
    return fragment;
  }
}
