import type { SourceDocument, SourceMap } from '../source/source.ts';
import { contentEnd, endOfPair, isFlow, type Piece, wholeLines } from './pieces.ts';

/** Takes a field out of a map, of a block map with its whole line; nothing where the map has none of that name. */
export function removeField(source: SourceDocument, map: SourceMap, key: string): Piece[] {
  const index = map.pairs.findIndex((pair) => pair.key.text === key);
  const pair = map.pairs[index];
  if (pair === undefined) return [];
  const [before, next] = [map.pairs[index - 1], map.pairs[index + 1]];
  if (before === undefined && next === undefined)
    return [{ start: map.start, end: contentEnd(source, map), text: '{}' }];
  if (before === undefined && next !== undefined)
    return [{ start: pair.key.start, end: next.key.start, text: '' }];
  if (before !== undefined && isFlow(source, map))
    return [{ start: endOfPair(source, before), end: endOfPair(source, pair), text: '' }];
  return [wholeLines(source, pair.key.start, endOfPair(source, pair))];
}
