import type { SourceDocument } from '../../entries/source/source.ts';

/** The text of a file with other words below its fields, which keep its line ends and its byte order mark. */
export function withBody(text: string, source: SourceDocument, body: string): string {
  const head = text.slice(0, text.length - source.body.length);
  const ended = head.endsWith('\n') || body === '' ? head : `${head}\n`;
  const breaks = head.includes('\r\n') ? '\r\n' : '\n';
  const words = body.replace(/\r?\n/g, breaks);
  return ended + (words === '' || words.endsWith('\n') ? words : words + breaks);
}
