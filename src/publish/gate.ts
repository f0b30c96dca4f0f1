import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Almanac } from '../almanac/almanac.ts';
import { addressOf, promisedPages } from './addresses.ts';
import { glanceAt, type ScannedPage, scanPage } from './scan-page.ts';
import { type WrittenText, writtenText } from './written-text.ts';

export type GateCode =
  | 'page-missing'
  | 'link-broken'
  | 'fragment-missing'
  | 'not-a-text'
  | 'path-of-this-machine'
  | 'address-lost'
  | 'file-unaccounted';

/** One reason why a built site must not replace the last good one. */
export interface GateFault {
  readonly code: GateCode;
  /** The page it stands on or the address it is about. */
  readonly page: string;
  readonly message: string;
}

export interface GateInput {
  /** Absolute path of the built site. */
  readonly folder: string;
  /** Every file of it, relative, with `/`. */
  readonly files: readonly string[];
  readonly almanac: Almanac;
  /** With a slash at both ends; `/` for a site at the root of its host. */
  readonly base: string;
  /** Addresses of the site this one would replace. */
  readonly previous: readonly string[];
  /** Absolute paths that must not appear in the output. */
  readonly privatePaths: readonly string[];
  /** Every file below the content folder, counted apart from the reader; relative, with `/`. */
  readonly contentFiles: readonly string[];
}

const textFile = /\.(?:html|json|csv|xml|css|js|svg|txt)$/;

/**
 * Looks at a built site before it replaces the last good one. An empty list lets it pass. What a person wrote in a
 * text (a dead link, the word "undefined") never stops a site; `check` is the place to say that.
 */
export async function gate(input: GateInput): Promise<GateFault[]> {
  const faults = [...missingPages(input), ...lostAddresses(input), ...unaccountedFiles(input)];
  const site: SiteIndex = {
    ...input,
    addresses: new Set(input.files.map(addressOf)),
    written: writtenText(input.almanac),
    wanted: [],
    sound: new Set(),
    ids: new Map(),
  };
  for (const file of input.files) {
    if (!textFile.test(file)) continue;
    const text = await readFile(join(input.folder, file), 'utf8');
    faults.push(...machinePaths(file, text, site));
    if (file.endsWith('.html')) faults.push(...faultsOfPage(file, text, site));
  }
  return [...faults, ...(await missingFragments(site))];
}

interface WantedFragment {
  readonly target: string;
  readonly fragment: string;
  readonly link: string;
  /** The page it stands on. */
  readonly file: string;
}

interface SiteIndex extends GateInput {
  readonly addresses: ReadonlySet<string>;
  readonly written: WrittenText;
  /** Fragments of other pages that a page points to. */
  readonly wanted: WantedFragment[];
  readonly ids: Map<string, ReadonlySet<string>>;
  /** Links from the root of the host that were followed and lead somewhere. */
  readonly sound: Set<string>;
}

function missingPages({ files, almanac }: GateInput): GateFault[] {
  const there = new Set(files.map(addressOf));
  return promisedPages(almanac)
    .filter(({ address }) => !there.has(address))
    .map(({ address, why }) => ({
      code: 'page-missing',
      page: address,
      message: `The page ${address} was not built: ${why}.`,
    }));
}

function lostAddresses({ files, previous }: GateInput): GateFault[] {
  const there = new Set(files.map(addressOf));
  return previous
    .filter((address) => !there.has(address))
    .map((address) => ({
      code: 'address-lost',
      page: address,
      message:
        `The address ${address} was in the last build and leads nowhere now. ` +
        'Write its old name under `formerly` in the file that replaces it, or keep the file and write `withdrawn` in it.',
    }));
}

/** A folder that is ignored as a whole is accounted for once, with a slash at its end. */
function unaccountedFiles({ almanac, contentFiles }: GateInput): GateFault[] {
  const accounted = new Set(almanac.files.map(({ file }) => file));
  const folders = [...accounted].filter((file) => file.endsWith('/'));
  const there = new Set(contentFiles);
  const missing = contentFiles.filter(
    (file) => !accounted.has(file) && !folders.some((folder) => file.startsWith(folder)),
  );
  const phantom = [...accounted].filter((file) => !file.endsWith('/') && !there.has(file));
  const twice = almanac.files.length - accounted.size;
  const faults = [
    ...missing.map((file) =>
      unaccounted(file, `The file ${file} is neither published nor left out nor ignored.`),
    ),
    ...phantom.map((file) =>
      unaccounted(file, `The file ${file} is accounted for but is not in the content folder.`),
    ),
  ];
  if (twice > 0) faults.push(unaccounted('', `${twice} content files are accounted for more than once.`));
  return faults;
}

function unaccounted(page: string, message: string): GateFault {
  return { code: 'file-unaccounted', page, message };
}

function machinePaths(file: string, text: string, site: SiteIndex): GateFault[] {
  for (const path of site.privatePaths) {
    for (let at = text.indexOf(path); at !== -1; at = text.indexOf(path, at + 1)) {
      const before = text[at - 1] ?? ' ';
      const after = text[at + path.length] ?? ' ';
      if (/[\w.-]/.test(before) || /[\w-]/.test(after)) continue;
      if (site.written.hasWord(path, path)) continue;
      return [
        {
          code: 'path-of-this-machine',
          page: addressOf(file),
          message: `The page ${addressOf(file)} shows a path of this machine: ${path}.`,
        },
      ];
    }
  }
  return [];
}

const notText = /\b(?:NaN|undefined|Infinity)\b|\[object \w+\]/;

function faultsOfPage(file: string, html: string, site: SiteIndex): GateFault[] {
  const { links, ids } = glanceAt(html);
  site.ids.set(file, ids);
  const broken = new Map<string, GateFault>();
  for (const link of links) {
    if (site.sound.has(link)) continue;
    const fault = followLink(link, file, ids, site);
    if (fault === null) {
      // An address from the root means the same on every page; fragments are looked up at the end.
      if (link.startsWith('/') && !link.includes('#')) site.sound.add(link);
    } else if (!site.written.hasLink(link)) broken.set(link, { ...fault, page: addressOf(file) });
  }
  const suspicious = notText.test(html);
  if (broken.size === 0 && !suspicious) return [];
  const scanned = scanPage(html);
  return [
    ...(suspicious ? wrongTexts(addressOf(file), scanned, site) : []),
    ...[...new Set(scanned.links)].flatMap((link) => broken.get(link) ?? []),
  ];
}

function wrongTexts(page: string, { texts, spoken }: ScannedPage, site: SiteIndex): GateFault[] {
  return [...texts, ...spoken].flatMap((text) => {
    const word = text.match(notText)?.[0];
    if (word === undefined || site.written.hasWord(word, text)) return [];
    const message = `The page ${page} says "${word}" where a value belongs: "${text.trim().slice(0, 80)}".`;
    return [{ code: 'not-a-text' as const, page, message }];
  });
}

/** Null where a link leads somewhere, or to another host. */
function followLink(
  link: string,
  file: string,
  ids: ReadonlySet<string>,
  site: SiteIndex,
): Pick<GateFault, 'code' | 'message'> | null {
  if (/^(?:[a-z][a-z0-9+.-]*:|\/\/)/i.test(link)) return null;
  const page = addressOf(file);
  const broken = (why: string): Pick<GateFault, 'code' | 'message'> => ({
    code: 'link-broken',
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

async function missingFragments(site: SiteIndex): Promise<GateFault[]> {
  const faults: GateFault[] = [];
  for (const { target, fragment, link, file } of site.wanted) {
    if (site.ids.get(target)?.has(fragment) === true || site.written.hasLink(link)) continue;
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
