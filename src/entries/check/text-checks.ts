import { tooMuchToRead } from '../markdown-limits.ts';
import type { Problem } from '../problems/problem.ts';
import { mayGrow, readMarkdown } from '../read-markdown.ts';
import type { SourceDocument } from '../source/source.ts';
import { mayHavePictures, picturesInText } from './pictures-in-text.ts';
import { mayHaveBrokenTables, tablesInText } from './tables-in-text.ts';
import { textAsWritten } from './text-as-written.ts';

/**
 * What is to be said of the text below the fields of a file. Reading Markdown takes longer than all other checks together:
 * a text is read once, and only where one of them has reason to.
 */
export function checkText(source: SourceDocument, isEntry: boolean): Problem[] {
  const { body } = source;
  const counted = tooMuchToRead(body);
  if (counted !== null) return [textAsWritten(source, counted)];
  if (!mayHavePictures(body) && !mayHaveBrokenTables(body) && !mayGrow(body)) return [];
  const { tree, tooMuch } = readMarkdown(body);
  if (tree === null) return [textAsWritten(source, tooMuch)];
  return [...picturesInText(source, tree, isEntry), ...tablesInText(source, tree)];
}
