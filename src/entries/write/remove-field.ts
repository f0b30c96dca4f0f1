import { lineEnd } from '../source/line-index.ts';
import type { SourceDocument, SourceMap } from '../source/source.ts';
import { afterColon, contentEnd, isEmpty, isFlow, type Piece } from './pieces.ts';

/** Takes a field out of a map, of a block map with its whole line; nothing where the map has none of that name. */
export function removeField(source: SourceDocument, map: SourceMap, key: string): Piece[] {
  const index = map.pairs.findIndex((pair) => pair.key.text === key);
  const pair = map.pairs[index];
  if (pair === undefined) return [];
  const [before, next] = [map.pairs[index - 1], map.pairs[index + 1]];
  const endOf = ({ key, value }: SourceMap['pairs'][number]) =>
    isEmpty(value) ? afterColon(source, key.end) : contentEnd(source, value);
  if (before === undefined && next === undefined)
    return [{ start: map.start, end: contentEnd(source, map), text: '{}' }];
  if (before === undefined && next !== undefined)
    return [{ start: pair.key.start, end: next.key.start, text: '' }];
  if (before !== undefined && isFlow(source, map))
    return [{ start: endOf(before), end: endOf(pair), text: '' }];
  const lineStart = source.text.lastIndexOf('\n', pair.key.start) + 1;
  return [
    { start: lineStart, end: source.text.indexOf('\n', lineEnd(source.text, endOf(pair))) + 1, text: '' },
  ];
}
