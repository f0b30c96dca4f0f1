import type { Almanac } from '../almanac/almanac.ts';

/**
 * Tells whether a suspicious piece of a page was written by a person. The gate must not stop a whole site because a
 * builder wrote "the turn was undefined": it looks for what the generator got wrong, not for words.
 */
export interface WrittenText {
  /** True where a person wrote this word in these surroundings. */
  readonly hasWord: (word: string, text: string) => boolean;
  /** True where a person wrote a link to this address in a text. */
  readonly hasLink: (address: string) => boolean;
}

/** Looks into everything people wrote; nothing is gathered before the first question. */
export function writtenText(almanac: Almanac): WrittenText {
  let strings: readonly string[] | null = null;
  let prose: string | null = null;
  return {
    hasWord(word, text) {
      strings ??= gather(almanac);
      const around = surroundings(word, text);
      return strings.some(
        (written) => written.includes(word) && (text.includes(written) || written.includes(around)),
      );
    },
    hasLink(address) {
      prose ??= htmlOf(almanac).join('\n').replaceAll('&amp;', '&').replaceAll('&#x26;', '&');
      return prose.includes(`"${address}"`);
    },
  };
}

/** The word with its neighbours, as far as the text reaches. */
function surroundings(word: string, text: string): string {
  const at = text.indexOf(word);
  const before = text.slice(0, at).match(/\S+\s*$/)?.[0] ?? '';
  const after = text.slice(at + word.length).match(/^\s*\S+/)?.[0] ?? '';
  return `${before}${word}${after}`.trim();
}

function gather(almanac: Almanac): string[] {
  const found: string[] = [];
  const sources: unknown[] = [
    almanac.site,
    almanac.pages.map(({ page }) => page),
    almanac.news.map(({ post }) => post),
    almanac.builders.map(({ builder }) => builder),
    almanac.batches.map(({ batch }) => batch),
    almanac.challenges.map(({ challenge, entries }) => [
      challenge,
      entries.map((it) => [it.entry, it.ruling]),
    ]),
  ];
  collect(sources, found);
  return found;
}

function collect(value: unknown, found: string[]): void {
  if (typeof value === 'string') {
    const text = value.replace(/\s+/g, ' ').trim();
    if (text !== '') found.push(text);
  } else if (Array.isArray(value)) for (const item of value) collect(item, found);
  else if (typeof value === 'object' && value !== null)
    for (const [key, item] of Object.entries(value)) {
      collect(key, found);
      collect(item, found);
    }
}

function htmlOf(almanac: Almanac): string[] {
  return [
    almanac.siteHtml,
    ...almanac.pages.map(({ html }) => html),
    ...almanac.news.map(({ html }) => html),
    ...almanac.builders.map(({ html }) => html),
    ...almanac.batches.map(({ html }) => html),
    ...almanac.challenges.flatMap((record) => [record.html, ...record.entries.map(({ html }) => html)]),
  ];
}
