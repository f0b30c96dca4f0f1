import { nearestSlug } from '../folder/slug-rules.ts';
import { forbiddenCharacters } from '../source/forbidden-characters.ts';
import { leaf, type Reading, refused, taken } from './leaf.ts';
import { textPatterns } from './text-patterns.ts';

/** Common practice of browsers and servers, no source. */
const longestLink = 2000;

/** Longer than any name. */
const longestName = 200;

/** Free text: a note, a sentence. */
export function text() {
  return leaf({ kind: 'text', longest: 5000 }, readText);
}

/** What something or somebody is called. */
export function shortText() {
  return leaf({ kind: 'text', longest: longestName }, readText);
}

/** Reads free text, in the composed form of Unicode (NFC), so that equal texts compare equal. */
export function readText(written: string): Reading<string> {
  const [found] = forbiddenCharacters(written, 1);
  if (found === undefined) return taken(written.normalize('NFC'));
  return refused(
    'forbidden-character',
    `there is a character in it that has no place in a text (${found.name}, ${found.reason}).`,
    found.name,
    'the text without it',
  );
}

/** The name a builder, an entry or a page has in addresses. */
export function slug() {
  return leaf({ kind: 'slug' }, (written): Reading<string> => {
    if (textPatterns.slug.test(written)) return taken(written);
    return refused(
      'not-a-slug',
      `"${written}" has characters that have no place in an address, or too many.`,
      written,
      'a name of a to z, digits and hyphens, at most 64 characters, such as amarsh or fen-a',
      nearestSlug(written) ?? undefined,
    );
  });
}

/** `<challenge>/<entry>`. */
export function entryAddress() {
  return leaf(
    { kind: 'entry-address' },
    (written): Reading<string> =>
      textPatterns['entry-address'].test(written)
        ? taken(written)
        : refused(
            'not-an-entry',
            `"${written}" does not name an entry.`,
            written,
            'the name of a challenge, a stroke and the name of an entry, such as fenside-2026/reedling',
          ),
  );
}

/**
 * The name of a picture or log beside the file. Whether it is a name of one, and there, is checked where the folder
 * is read: a bad picture costs the picture, not the entry.
 */
export function fileName() {
  return leaf({ kind: 'file-name' }, readText, longestName);
}

/** A limit on a figure, in words; whether it is one is seen with the figure. */
export function limitText() {
  return leaf({ kind: 'limit' }, readText, longestName);
}

/** The id of a figure of the model; whether it is one is seen with the rules. */
export function figureId() {
  return leaf({ kind: 'figure' }, readText);
}

/** A step of a tie-break, in words; whether it is one is seen with the rules. */
export function tieBreakStep() {
  return leaf({ kind: 'tie-break' }, readText);
}

/** A web address, `https` or `http`. */
export function link() {
  return leaf({ kind: 'link' }, readLink, longestLink);
}

/** The web address of a site, which ends with its path. */
export function siteAddress() {
  return leaf({ kind: 'site-address' }, (written): Reading<string> => {
    const reading = readLink(written);
    const tail = written.search(/[?#]/);
    if (!reading.ok || tail < 0) return reading;
    return refused(
      'not-a-link',
      `"${written}" goes on behind the path with "${written.slice(tail)}".`,
      written,
      'the address without it',
      written.slice(0, tail),
    );
  });
}

function readLink(written: string): Reading<string> {
  if (textPatterns.link.test(written) && URL.canParse(written) && readText(written).ok) return taken(written);
  return refused(
    'not-a-link',
    `"${written}" is not an address of the web.`,
    written,
    'an address that starts with https:// or http://, such as https://video.example/abc',
    /^(www\.)?[a-z0-9-]+(\.[a-z0-9-]+)+(\/\S*)?$/i.test(written) ? `https://${written}` : undefined,
  );
}

/** An address of electronic mail. */
export function mailAddress() {
  return leaf(
    { kind: 'mail-address' },
    (written): Reading<string> =>
      textPatterns['mail-address'].test(written)
        ? taken(written)
        : refused(
            'not-a-mail-address',
            `"${written}" is not a mail address.`,
            written,
            'a mail address, such as entries@fenside.example',
            /^mailto:(.+)$/i.exec(written)?.[1],
          ),
  );
}

/** A colour as six hexadecimal digits. */
export function colour() {
  return leaf(
    { kind: 'colour' },
    (written): Reading<string> =>
      textPatterns.colour.test(written)
        ? taken(written.toLowerCase())
        : refused(
            'not-a-colour',
            `"${written}" is not a colour as it is written here.`,
            written,
            'a hash and six hexadecimal digits, in quotes because of the hash, such as "#8a3b12"',
            /^[0-9a-f]{6}$/i.test(written) ? `"#${written.toLowerCase()}"` : undefined,
          ),
  );
}
