import type { Plain, SourceDocument, SourceMap, SourceNode } from '../source/source.ts';
import {
  afterColon,
  columnOfFields,
  contentEnd,
  endOfPair,
  isEmpty,
  isFlow,
  lineBreak,
  linesBehind,
  type Piece,
} from './pieces.ts';
import { fieldLines, inline } from './yaml-text.ts';

/**
 * Puts a field in the place of the one a map has, else in front of the first that it has of `before`, else behind its
 * last one, in the style of the map. Remarks stay with the field they stand above.
 */
export function setField(
  source: SourceDocument,
  map: SourceMap,
  key: string,
  value: Plain,
  before: readonly string[] = [],
  spread = false,
): Piece[] {
  const present = map.pairs.find((pair) => pair.key.text === key);
  const flow = isFlow(source, map);
  if (present !== undefined) {
    const [, ...more] = flow ? [] : fieldLines(key, value, spread);
    const text = more.length > 0 ? below(source, map, more) : null;
    const start = afterColon(source, present.key.end);
    if (text !== null || isEmpty(present.value))
      return [
        {
          start,
          end: endOf(source, present.value, start),
          text: text ?? ` ${inline(value, flow ? 'flow' : 'block')}`,
        },
      ];
    return [replaced(source, present.value, inline(value, flow ? 'flow' : 'block'))];
  }
  const next = map.pairs.findIndex((pair) => before.includes(pair.key.text));
  if (flow) return [inBraces(source, map, inline({ [key]: value }, 'flow').slice(2, -2), next)];
  const lines = fieldLines(key, value, spread);
  if (next === 0) return [inFront(source, map, lines)];
  const behind = map.pairs.at(next - 1);
  if (next > 0 && behind !== undefined)
    return [linesBehind(source, endOfPair(source, behind), columnOfFields(source, map), lines)];
  if (map.pairs.length > 0)
    return [linesBehind(source, contentEnd(source, map), columnOfFields(source, map), lines)];
  // A file without any field: in front of the line that closes the front matter.
  const closing = source.text.indexOf('\n---', source.text.indexOf('\n')) + 1;
  const text = lines.map((line) => line + lineBreak(source)).join('');
  return [{ start: closing, end: closing, text }];
}

/** Text in the place of a value. */
export function replaced(source: SourceDocument, node: SourceNode, text: string): Piece {
  return { start: node.start, end: contentEnd(source, node), text };
}

/** The end of a value that begins behind its colon, where there is one. */
function endOf(source: SourceDocument, node: SourceNode, start: number): number {
  return isEmpty(node) ? start : contentEnd(source, node);
}

function below(source: SourceDocument, map: SourceMap, lines: readonly string[]): string {
  const indent = ' '.repeat(columnOfFields(source, map));
  return lines.map((line) => lineBreak(source) + indent + line).join('');
}

/** Lines in front of the first field of a map in block style, which may stand behind the dash of a list. */
function inFront(source: SourceDocument, map: SourceMap, lines: readonly string[]): Piece {
  const column = columnOfFields(source, map);
  const at = map.pairs[0]?.key.start ?? map.start;
  return {
    start: at,
    end: at,
    text: lines.map((line) => line + lineBreak(source) + ' '.repeat(column)).join(''),
  };
}

/** A field in front of the one at an index, behind the last where the index is none. */
function inBraces(source: SourceDocument, map: SourceMap, field: string, index: number): Piece {
  const next = index < 0 ? undefined : map.pairs[index];
  if (next !== undefined) return { start: next.key.start, end: next.key.start, text: `${field}, ` };
  const last = map.pairs.at(-1);
  if (last === undefined) return { start: map.start, end: map.end, text: `{ ${field} }` };
  const at = endOfPair(source, last);
  return { start: at, end: at, text: `, ${field}` };
}
