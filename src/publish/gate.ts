import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Almanac } from '../almanac/almanac.ts';
import { addressOf, promisedPages } from './addresses.ts';
import { followLinks, type LinkFollower } from './follow-links.ts';
import type { GateFault } from './gate-fault.ts';
import { glanceAt, type ScannedPage, scanPage } from './scan-page.ts';
import { type WrittenText, writtenText } from './written-text.ts';

export type { GateFault };

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
  const written = writtenText(input.almanac);
  const links = followLinks(input, written);
  for (const file of input.files) {
    if (!textFile.test(file)) continue;
    // Nothing else waits: to hand thousands of small files to other threads takes longer than to read them.
    const bytes = readFileSync(join(input.folder, file));
    faults.push(...machinePaths(file, bytes, input.privatePaths, written));
    if (file.endsWith('.html')) faults.push(...faultsOfPage(file, bytes, links, written));
    if (file.endsWith('.css'))
      faults.push(
        ...links.brokenOn(file, { links: linksOfStyle(bytes.toString()), ids: new Set() }).values(),
      );
  }
  return [...faults, ...(await links.missingFragments())];
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

function machinePaths(
  file: string,
  bytes: Buffer,
  privatePaths: readonly string[],
  written: WrittenText,
): GateFault[] {
  const shown = privatePaths.filter((path) => bytes.includes(path));
  if (shown.length === 0) return [];
  const text = bytes.toString();
  for (const path of shown) {
    for (let at = text.indexOf(path); at !== -1; at = text.indexOf(path, at + 1)) {
      const before = text[at - 1] ?? ' ';
      const after = text[at + path.length] ?? ' ';
      if (/[\w.-]/.test(before) || /[\w-]/.test(after)) continue;
      if (written.hasWord(path, path)) continue;
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

/** What a style sheet asks for: fonts, pictures, other style sheets. */
function linksOfStyle(css: string): ReadonlySet<string> {
  const asked = css.matchAll(
    /\burl\(\s*(?:"([^"]*)"|'([^']*)'|([^"')\s]*))\s*\)|@import\s+["']([^"']*)["']/gi,
  );
  return new Set(
    [...asked].map(([, double, single, bare, sheet]) => double ?? single ?? bare ?? sheet ?? ''),
  );
}

function faultsOfPage(file: string, bytes: Buffer, links: LinkFollower, written: WrittenText): GateFault[] {
  // One letter for each byte: to make a text of every page would take as long as all the looking.
  const letters = bytes.toString('latin1');
  const broken = links.brokenOn(file, glanceAt(letters));
  const suspicious = notText.test(letters);
  if (broken.size === 0 && !suspicious) return [];
  const scanned = scanPage(bytes.toString());
  return [
    ...(suspicious ? wrongTexts(addressOf(file), scanned, written) : []),
    ...[...new Set(scanned.links)].flatMap((link) => broken.get(link) ?? []),
  ];
}

function wrongTexts(page: string, { texts, spoken }: ScannedPage, written: WrittenText): GateFault[] {
  return [...texts, ...spoken].flatMap((text) => {
    const word = text.match(notText)?.[0];
    if (word === undefined || written.hasWord(word, text)) return [];
    const message = `The page ${page} says "${word}" where a value belongs: "${text.trim().slice(0, 80)}".`;
    return [{ code: 'not-a-text' as const, page, message }];
  });
}
