import type { SourceDocument, SourceList } from '../source/source.ts';
import { contentEnd, isFlow, type Piece, wholeLines } from './pieces.ts';

/** Takes an item out of a list, of a block list with its whole lines; the last one leaves the empty list. */
export function removeItem(source: SourceDocument, list: SourceList, index: number): Piece[] {
  const item = list.items[index];
  if (item === undefined) return [];
  const [before, next] = [list.items[index - 1], list.items[index + 1]];
  if (before === undefined && next === undefined)
    return [{ start: list.start, end: contentEnd(source, list), text: '[]' }];
  if (!isFlow(source, list)) return [wholeLines(source, item.start, contentEnd(source, item))];
  if (next !== undefined) return [{ start: item.start, end: next.start, text: '' }];
  const start = before === undefined ? item.start : contentEnd(source, before);
  return [{ start, end: contentEnd(source, item), text: '' }];
}
