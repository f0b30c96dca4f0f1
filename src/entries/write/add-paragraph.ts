/** The text of a content file with a paragraph behind its last, in the file's own line ends; on one line whatever it holds. */
export function addParagraph(text: string, paragraph: string): string {
  const end = text.includes('\r\n') ? '\r\n' : '\n';
  return `${text.trimEnd()}${end}${end}${paragraph.replace(/\s+/g, ' ').trim()}${end}`;
}
