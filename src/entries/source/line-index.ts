/** Offsets of the first character of every line, ascending; the first is 0. */
export type LineStarts = readonly number[];

/** Lines end at a line feed; the carriage return before one belongs to its line. */
export function lineStarts(text: string): LineStarts {
  const starts = [0];
  for (let at = text.indexOf('\n'); at !== -1; at = text.indexOf('\n', at + 1)) starts.push(at + 1);
  return starts;
}

/**
 * Line and column, both from 1, of an offset; columns count UTF-16 units, a tab is one. An offset before the text
 * is taken as its first, one after the end lies on the last line.
 */
export function positionAt(starts: LineStarts, offset: number): { line: number; column: number } {
  const at = Math.max(0, offset);
  let low = 0;
  let high = starts.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if ((starts[middle] ?? 0) <= at) low = middle;
    else high = middle - 1;
  }
  return { line: low + 1, column: at - (starts[low] ?? 0) + 1 };
}

/** How far a line reaches, without its line end; the last line's end for a line that does not exist. */
export function lineEnd(text: string, offset: number): number {
  const feed = text.indexOf('\n', offset);
  if (feed === -1) return text.length;
  return feed > offset && text[feed - 1] === '\r' ? feed - 1 : feed;
}
