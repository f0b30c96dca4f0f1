import { lineEnd } from '../source/line-index.ts';
import type { SourceDocument, SourceMap, SourceNode } from '../source/source.ts';

/** A stretch of the text, by offsets, and what will stand there. */
export interface Piece {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

/** The text with its pieces put in; pieces must not overlap. */
export function withPieces(text: string, pieces: readonly Piece[]): string {
  return [...pieces]
    .sort((a, b) => b.start - a.start)
    .reduce((written, piece) => written.slice(0, piece.start) + piece.text + written.slice(piece.end), text);
}

/** The line end that the file uses. */
export function lineBreak({ text }: SourceDocument): string {
  return /\r\n/.test(text) ? '\r\n' : '\n';
}

/** Whether a list or a map stands in brackets. */
export function isFlow({ text }: SourceDocument, node: SourceNode): boolean {
  return node.kind !== 'scalar' && /[[{]/.test(text.charAt(node.start));
}

/** Where the last letter of a value ends. What YAML counts to a block, such as remarks below it, is not of it. */
export function contentEnd(source: SourceDocument, node: SourceNode): number {
  if (node.kind === 'list' && !isFlow(source, node)) {
    const last = node.items.at(-1);
    return last === undefined ? node.end : contentEnd(source, last);
  }
  if (node.kind === 'map' && !isFlow(source, node)) {
    const last = node.pairs.at(-1);
    return last === undefined ? node.end : endOfPair(source, last);
  }
  return node.start + source.text.slice(node.start, node.end).trimEnd().length;
}

/** Where the last letter of a field ends: of its value, or its colon where it has none. */
export function endOfPair(source: SourceDocument, { key, value }: SourceMap['pairs'][number]): number {
  return isEmpty(value) ? afterColon(source, key.end) : contentEnd(source, value);
}

/** Whether nothing is written where a value belongs. */
export function isEmpty(node: SourceNode): boolean {
  return node.kind === 'scalar' && node.start === node.end;
}

/** The offset behind the colon of a key that ends at an offset. */
export function afterColon({ text }: SourceDocument, keyEnd: number): number {
  return text.indexOf(':', keyEnd) + 1;
}

/** The column, from 0, of an offset in its line. */
export function columnOf({ text }: SourceDocument, offset: number): number {
  return offset - (text.lastIndexOf('\n', offset - 1) + 1);
}

/** Lines put behind the line in which an offset lies, all beginning at a column. */
export function linesBehind(
  source: SourceDocument,
  offset: number,
  column: number,
  lines: readonly string[],
): Piece {
  const at = lineEnd(source.text, offset);
  const text = lines.map((line) => lineBreak(source) + ' '.repeat(column) + line).join('');
  return { start: at, end: at, text };
}

/** The lines from the one in which an offset lies to the one in which another does, taken out. */
export function wholeLines({ text }: SourceDocument, from: number, to: number): Piece {
  return {
    start: text.lastIndexOf('\n', from) + 1,
    end: text.indexOf('\n', lineEnd(text, to)) + 1,
    text: '',
  };
}

/** The column at which the fields of a block map begin. */
export function columnOfFields(source: SourceDocument, map: SourceMap): number {
  const first = map.pairs[0];
  return first === undefined ? 0 : columnOf(source, first.key.start);
}
