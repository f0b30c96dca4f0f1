import { printable } from './printable.ts';

/** The longest text of somebody else that is shown whole. */
const longest = 160;

/**
 * What somebody wrote, as a span of code: there no forge looks for markup, links, names to notify or numbers of issues. A bar
 * would part the cells of a table, a backtick end the span, so both stand as their code point.
 */
export function inCode(text: string): string {
  const line = printable(short(text).replaceAll(/\s+/g, ' ').trim())
    .replaceAll('`', '<U+0060>')
    .replaceAll('|', '<U+007C>');
  return line === '' ? '` `' : `\`${line}\``;
}

/**
 * A sentence that quotes what somebody wrote, as plain text: every mark that Markdown or HTML knows is taken for itself,
 * and what a forge makes into a link or a notification by itself is parted by a space of no width.
 */
export function inText(text: string): string {
  return printable(
    short(text, 4 * longest)
      .replaceAll(/\s+/g, ' ')
      .trim(),
  )
    .replaceAll(/[\\`*_{}[\]<>|~!$^=#&]/g, '\\$&')
    .replace(/^[-+]/, '\\$&')
    .replace(/^(\d+)([.)])/, '$1\\$2')
    .replaceAll('@', '@&#8203;')
    .replaceAll('\\#', '\\#&#8203;')
    .replaceAll('://', ':&#8203;//')
    .replaceAll(/(w)(ww\.)/gi, '$1&#8203;$2');
}

function short(text: string, most = longest): string {
  const characters = [...text.slice(0, 2 * most + 2)];
  return characters.length <= most ? text : `${characters.slice(0, most).join('')}…`;
}
