/**
 * A style sheet that prints the site's name and the date of the page on every sheet of paper, and counts the sheets.
 * Only paper shows it: margins of a page do not exist on a screen.
 */
export function paperStyle(site: string, date: string): string {
  const box = (where: string, content: string): string => `@${where}{content:${content}}`;
  return `@page{${box('top-left', quoted(site))}${box('top-right', quoted(date))}${box('bottom-right', 'counter(page) " / " counter(pages)')}}\n`;
}

/** A text as a string of CSS; what could end it is written by its number. */
function quoted(text: string): string {
  return `"${text.replace(/["\\\p{Cc}]/gu, (sign) => `\\${sign.codePointAt(0)?.toString(16)} `)}"`;
}
