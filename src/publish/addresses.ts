import type { Almanac } from '../almanac/almanac.ts';
import { goneEntries } from '../almanac/gone-entries.ts';
import { fileKinds } from '../entries/schema/file-kinds.ts';

/** The file in a built site that lists its addresses; also the sign that a folder is a site built here. */
export const addressesFile = 'addresses.json';

/** Folders whose file names come from their content: nobody is promised that such an address stays. */
const passing = /^(?:assets|photos)\//;

/** The site path of a file of the output, such as `/entries/a/b/` for `entries/a/b/index.html`. */
export function addressOf(file: string): string {
  return `/${file.replace(/(?:^|(?<=\/))index\.html$/, '')}`;
}

/** The addresses that a site promises to keep, sorted, from the files of its folder (relative, with `/`). */
export function addressesOf(files: readonly string[]): string[] {
  return files
    .filter(
      (file) =>
        !passing.test(file) &&
        !/^(?:404\.html|addresses\.json|\.nojekyll|robots\.txt|sitemap\.xml)$/.test(file),
    )
    .map(addressOf)
    .sort();
}

/** Text of `addresses.json`. */
export function addressesText(addresses: readonly string[]): string {
  return `${JSON.stringify({ format: 1, addresses }, null, 1)}\n`;
}

/** Reads what {@link addressesText} wrote; null where the text is something else. */
export function readAddresses(text: string): string[] | null {
  try {
    const data: unknown = JSON.parse(text);
    if (typeof data !== 'object' || data === null || !('addresses' in data)) return null;
    const { addresses } = data;
    return Array.isArray(addresses) && addresses.every((address) => typeof address === 'string')
      ? addresses
      : null;
  } catch {
    return null;
  }
}

/** A page that must be there, and why. */
export interface PromisedPage {
  readonly address: string;
  readonly why: string;
}

/** Every page the almanac promises: what was published has one, and what was left out has its notice. */
export function promisedPages(almanac: Almanac): PromisedPage[] {
  return [
    { address: '/', why: 'the front page' },
    { address: '/left-out/', why: 'the list of what was left out' },
    { address: '/feed.xml', why: 'the feed' },
    { address: '/compare/', why: 'the page of comparisons' },
    { address: '/enter/', why: 'the form for an entry' },
    { address: '/schema/', why: 'the list of the kinds of files' },
    ...fileKinds.flatMap(({ kind, title }) => [
      { address: `/schema/${kind}/`, why: `the fields of a file: ${title}` },
      { address: `/schema/${kind}.json`, why: `the schema of a file: ${title}` },
    ]),
    ...almanac.challenges.flatMap(({ challenge, entries }) => [
      { address: `/challenges/${challenge.id}/`, why: `the board of ${challenge.id}` },
      { address: `/challenges/${challenge.id}/rules/`, why: `the rules of ${challenge.id}` },
      { address: `/challenges/${challenge.id}/records/`, why: `the records of ${challenge.id}` },
      { address: `/challenges/${challenge.id}/plot/`, why: `the plot of ${challenge.id}` },
      { address: `/challenges/${challenge.id}/awaiting/`, why: `what ${challenge.id} waits for` },
      ...[challenge.id, ...challenge.formerly].flatMap((name) => [
        { address: `/data/${name}.json`, why: `the data of ${challenge.id}` },
        { address: `/data/${name}.csv`, why: `the table of ${challenge.id}` },
      ]),
      ...entries.map(({ entry }) => ({
        address: `/entries/${challenge.id}/${entry.id}/`,
        why: `the published entry ${challenge.id}/${entry.id}`,
      })),
    ]),
    ...almanac.leftOut.map(({ challenge, entry }) => ({
      address: `/entries/${challenge}/${entry}/`,
      why: `the notice of the entry ${challenge}/${entry}, which was left out`,
    })),
    ...goneEntries(almanac).map(({ home, entry }) => ({
      address: `/entries/${home.challenge.id}/${entry.id}/`,
      why: `the entry ${home.challenge.id}/${entry.id}, which only the final result still tells of`,
    })),
    ...almanac.builders.map(({ builder }) => ({
      address: `/builders/${builder.handle}/`,
      why: `the builder ${builder.handle}`,
    })),
    ...almanac.pages.map(({ page }) => ({ address: `/${page.id}/`, why: `the page ${page.id}` })),
    ...almanac.news.map(({ post }) => ({ address: `/news/${post.id}/`, why: `the news ${post.id}` })),
    ...almanac.batches.map(({ batch }) => ({
      address: `/rubber/${batch.id}/`,
      why: `the rubber ${batch.id}`,
    })),
    ...[...almanac.redirects.keys()].map((address) => ({ address, why: 'an old address that leads on' })),
  ];
}
