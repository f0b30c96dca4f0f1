// Control characters, line separators, and what is not drawn or turns the direction of text (but for the joiners some
// languages need): what could move a terminal's cursor, colour it, or make a line look like another.
const unprintable = /(?![\u200c\u200d])[\p{Cc}\p{Cf}\u2028\u2029]/gu;

// Build servers take `##` before a bracket or a word and a bracket for a command, wherever in a line it stands (from memory).
const marks = /##(?=\w*\[)/g;

/** Text from a file, safe to print: what could act on a terminal is shown as its code point, such as `<U+001B>`. */
export function printable(text: string): string {
  return text.replace(marks, '#<U+0023>').replace(unprintable, (character) => {
    const point = character.codePointAt(0) ?? 0;
    return `<U+${point.toString(16).toUpperCase().padStart(4, '0')}>`;
  });
}

// Build servers take two colons that begin a line, blanks aside, for a command (GitHub's documentation, "Workflow commands").
const opening = /^(\s*):(?=:)/;

/** A whole line that begins with text from a file, safe to print. */
export function printableLine(line: string): string {
  return printable(line.replace(opening, '$1<U+003A>'));
}
