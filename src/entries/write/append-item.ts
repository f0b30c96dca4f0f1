import type { Plain, SourceDocument, SourceMap } from '../source/source.ts';
import {
  afterColon,
  columnOf,
  columnOfFields,
  contentEnd,
  isEmpty,
  isFlow,
  lineBreak,
  linesBehind,
  type Piece,
} from './pieces.ts';
import { replaced, setField } from './set-field.ts';
import { inline, itemLines } from './yaml-text.ts';

/** Puts an item behind the last of the list in a field of a map, which is begun where there is none. */
export function appendItem(
  source: SourceDocument,
  map: SourceMap,
  key: string,
  item: Plain,
  spread = false,
): Piece[] {
  const present = map.pairs.find((pair) => pair.key.text === key);
  if (present === undefined || isEmpty(present.value)) return setField(source, map, key, [item], [], spread);
  const list = present.value;
  if (list.kind === 'scalar')
    return [replaced(source, list, inline([list.text, item], isFlow(source, map) ? 'flow' : 'block'))];
  if (list.kind === 'map') {
    if (isFlow(source, map)) return inBrackets(source, list, item);
    const lines = itemLines(item, spread);
    const column = columnOfFields(source, map) + 2;
    return [
      ...asFirstItem(source, list, present.key.end, column),
      linesBehind(source, contentEnd(source, list), column, lines),
    ];
  }
  const last = list.items.at(-1);
  if (last === undefined) return setField(source, map, key, [item], [], spread);
  if (isFlow(source, list)) {
    const at = contentEnd(source, last);
    return [{ start: at, end: at, text: `, ${inline(item, 'flow')}` }];
  }
  return [
    linesBehind(source, contentEnd(source, list), columnOf(source, list.start), itemLines(item, spread)),
  ];
}

function inBrackets(source: SourceDocument, map: SourceMap, item: Plain): Piece[] {
  const end = contentEnd(source, map);
  return [
    { start: map.start, end: map.start, text: '[' },
    { start: end, end, text: `, ${inline(item, 'flow')}]` },
  ];
}

/** A map that stood for a list of itself becomes its first item: on a line of its own, further lines moved along. */
function asFirstItem(source: SourceDocument, map: SourceMap, keyEnd: number, column: number): Piece[] {
  const colon = afterColon(source, keyEnd);
  const onLineOfKey = !source.text.slice(colon, map.start).includes('\n');
  if (onLineOfKey)
    return [{ start: colon, end: map.start, text: `${lineBreak(source)}${' '.repeat(column)}- ` }];
  const moved = [...source.text.slice(map.start, contentEnd(source, map)).matchAll(/\n(?=[^\r\n])/g)].map(
    ({ index }): Piece => ({ start: map.start + index + 1, end: map.start + index + 1, text: '  ' }),
  );
  return [{ start: map.start, end: map.start, text: '- ' }, ...moved];
}
