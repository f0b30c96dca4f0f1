/** What a text may not hold: a character that cannot be seen, or that makes a line read otherwise than it stands. */
export interface ForbiddenCharacter {
  readonly index: number;
  readonly length: number;
  /** As `U+202E`. */
  readonly name: string;
  readonly reason: string;
}

/**
 * Control characters but tab and line ends, bidirectional embeddings, overrides and isolates (U+202A–U+202E,
 * U+2066–U+2069, as Unicode Standard Annex #9 lists them), a byte order mark inside the text, half a surrogate pair.
 */
const forbidden = /\r(?!\n)|[^\P{Cc}\t\n\r]|[\u202A-\u202E\u2066-\u2069\uFEFF]|\p{Cs}/gu;

/** Every forbidden character of a text, in order, at most `most`. */
export function forbiddenCharacters(text: string, most: number): ForbiddenCharacter[] {
  const found: ForbiddenCharacter[] = [];
  for (const match of text.matchAll(forbidden)) {
    if (found.length === most) break;
    const code = match[0].codePointAt(0) ?? 0;
    const name = `U+${code.toString(16).toUpperCase().padStart(4, '0')}`;
    found.push({ index: match.index, length: match[0].length, name, reason: reasonFor(code) });
  }
  return found;
}

function reasonFor(code: number): string {
  if (code === 0xd) return 'a carriage return that ends no line';
  if (code === 0xfeff) return 'a byte order mark inside the text';
  if (code >= 0xd800 && code <= 0xdfff) return 'half a surrogate pair';
  return code < 0x100 ? 'a control character' : 'a character that changes the direction of the text unseen';
}
