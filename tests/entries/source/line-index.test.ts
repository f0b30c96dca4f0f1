import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lineEnd, lineStarts, positionAt } from '../../../src/entries/source/line-index.ts';

/** Line and column of each character of a text, counted by hand in the expectations below. */
function placeOf(text: string, needle: string): string {
  const { line, column } = positionAt(lineStarts(text), text.indexOf(needle));
  return `${line}:${column}`;
}

describe('line and column of an offset', () => {
  it('count from 1', () => {
    expect(placeOf('ab\ncd', 'a')).toBe('1:1');
    expect(placeOf('ab\ncd', 'd')).toBe('2:2');
  });

  it('take CRLF as one line end, whose characters belong to the line', () => {
    expect(placeOf('ab\r\ncd', '\r')).toBe('1:3');
    expect(placeOf('ab\r\ncd', 'c')).toBe('2:1');
  });

  it('count a tab as one column and a character outside the basic plane as two', () => {
    expect(placeOf('\tx', 'x')).toBe('1:2');
    expect(placeOf('é″x', 'x')).toBe('1:3');
    expect(placeOf('🛩x', 'x')).toBe('1:3');
  });

  it('give 1:1 in an empty text and the last line for the end', () => {
    expect(positionAt(lineStarts(''), 0)).toEqual({ line: 1, column: 1 });
    expect(positionAt(lineStarts('a\n'), 2)).toEqual({ line: 2, column: 1 });
    expect(positionAt(lineStarts('a\nbc'), 4)).toEqual({ line: 2, column: 3 });
    expect(positionAt(lineStarts('a'), -5)).toEqual({ line: 1, column: 1 });
  });

  it('agree with splitting the text before the offset into lines', () => {
    const text = fc.string({ unit: fc.constantFrom('a', '\n', '\r', '\t', 'é', '🛩'), maxLength: 60 });
    fc.assert(
      fc.property(text, fc.nat(60), (written, offset) => {
        const at = Math.min(offset, written.length);
        const before = written.slice(0, at).split('\n');
        const expected = { line: before.length, column: (before.at(-1)?.length ?? 0) + 1 };
        expect(positionAt(lineStarts(written), at)).toEqual(expected);
      }),
      { seed: 1 },
    );
  });
});

describe('the end of a line', () => {
  it('stands before LF or CRLF, and at the end of the last line', () => {
    expect(lineEnd('ab\ncd', 0)).toBe(2);
    expect(lineEnd('ab\r\ncd', 0)).toBe(2);
    expect(lineEnd('ab\ncd', 3)).toBe(5);
    expect(lineEnd('', 0)).toBe(0);
  });
});
