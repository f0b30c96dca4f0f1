import { describe, expect, it } from 'vitest';
import type { BoardLine } from '../../../src/client/board/board-line.ts';
import { type BoardView, type SortColumn, wholeBoard } from '../../../src/client/board/board-view.ts';
import { fittingLines } from '../../../src/client/board/fitting-lines.ts';
import { foldedLetters } from '../../../src/client/board/folded-letters.ts';
import { sortedLines } from '../../../src/client/board/sorted-lines.ts';

function line(
  position: number,
  name: string,
  span: number | null,
  changes: Partial<BoardLine> = {},
): BoardLine {
  const values = new Map<SortColumn, number | string>([['aircraft', foldedLetters(name)]]);
  if (span !== null) values.set('span', span);
  return {
    entry: name,
    position,
    values,
    letters: foldedLetters(`${name} Håkon Lindtråd`),
    builders: ['hlindtrad'],
    control: 'free',
    divisions: new Map(),
    ...changes,
  };
}

const lines = [
  line(0, 'Organza', 2.01, { divisions: new Map([['own', 1]]) }),
  line(1, 'Długa Nić', 3, { control: 'guided', divisions: new Map([['own', 0]]) }),
  line(2, 'Pirn', null, { builders: ['bluebutton', 'fox'] }),
  line(3, 'Éclat', 0.95),
  line(4, 'Shuttle', 2.01),
];

function names(view: Partial<BoardView>): string[] {
  const whole = { ...wholeBoard, ...view };
  return sortedLines(fittingLines(lines, whole), whole).map(({ entry }) => entry);
}

function sortedBy(column: SortColumn, largestFirst: boolean): string[] {
  return names({ sort: { column, largestFirst } });
}

describe('sorting', () => {
  it('keeps the order of places among equals, whichever way', () => {
    expect(sortedBy('span', false)).toEqual(['Éclat', 'Organza', 'Shuttle', 'Długa Nić', 'Pirn']);
    expect(sortedBy('span', true)).toEqual(['Długa Nić', 'Organza', 'Shuttle', 'Éclat', 'Pirn']);
  });

  it('takes letters with marks for plain ones', () => {
    expect(sortedBy('aircraft', false)).toEqual(['Długa Nić', 'Éclat', 'Organza', 'Pirn', 'Shuttle']);
  });

  it('turns places round', () => {
    expect(sortedBy('place', true)).toEqual(['Shuttle', 'Éclat', 'Pirn', 'Długa Nić', 'Organza']);
  });

  it('follows the places of a division where one is chosen', () => {
    expect(names({ division: 'own' })).toEqual(['Długa Nić', 'Organza']);
  });
});

describe('what fits', () => {
  it('has every word in a name or a builder, in any order and without marks', () => {
    expect(names({ sought: 'LINDTRAD dluga' })).toEqual(['Długa Nić']);
    expect(names({ sought: 'dluga otter' })).toEqual([]);
    expect(names({ sought: '  ' })).toHaveLength(lines.length);
  });

  it('lies in a range of spans, ends included; an unknown span lies in none', () => {
    expect(names({ spanFrom: 2.01 })).toEqual(['Organza', 'Długa Nić', 'Shuttle']);
    expect(names({ spanTo: 2.01 })).toEqual(['Organza', 'Éclat', 'Shuttle']);
    expect(names({ spanFrom: 3, spanTo: 2 })).toEqual([]);
  });

  it('answers to one of its builders and to its control', () => {
    expect(names({ builder: 'fox' })).toEqual(['Pirn']);
    expect(names({ control: 'guided' })).toEqual(['Długa Nić']);
  });
});

// Unicode takes most marks off by itself (UAX 15, NFKD); these letters have none to take off. Common practice, no source.
describe('folded letters', () => {
  it.each([
    ['Długa Nić', 'dluga nic'],
    ['Håkon Ørsted', 'hakon orsted'],
    ['Straße', 'strasse'],
    ['ÆON', 'aeon'],
    ['O’Hare', "o'hare"],
    ['ﬁn', 'fin'],
  ])('make "%s" into "%s"', (text, folded) => {
    expect(foldedLetters(text)).toBe(folded);
  });
});
