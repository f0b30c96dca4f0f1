// Control characters, line separators, and the marks that turn the direction of text: what could move a terminal's
// cursor, colour it, or make a line look like another.
const unprintable = /[\p{Cc}\u2028\u2029\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069\ufeff]/gu;

/** Text from a file, safe to print: what could act on a terminal is shown as its code point, such as `<U+001B>`. */
export function printable(text: string): string {
  return text.replace(unprintable, (character) => {
    const point = character.codePointAt(0) ?? 0;
    return `<U+${point.toString(16).toUpperCase().padStart(4, '0')}>`;
  });
}
