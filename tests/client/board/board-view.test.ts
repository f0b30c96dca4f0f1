import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  mostPicked,
  readView,
  sortColumns,
  wholeBoard,
  writeView,
} from '../../../src/client/board/board-view.ts';

const holds = {
  divisions: new Set(['free', 'own']),
  builders: new Set(['mthorn', 'small-fox']),
  controls: new Set(['free', 'guided']),
  entries: new Set(['heron', 'bittern', 'tern', 'wren', 'reedling']),
};

describe('the address of a board', () => {
  it('is empty for the whole board', () => {
    expect(writeView(wholeBoard)).toBe('');
    expect(readView('', holds)).toEqual(wholeBoard);
  });

  it('says what was asked in plain words', () => {
    const view = {
      ...wholeBoard,
      sort: { column: 'span', largestFirst: true },
      division: 'own',
      spanFrom: 1.5,
      sought: ' dluga ',
      picked: ['heron', 'tern'],
    } as const;
    expect(writeView(view)).toBe('sort=-span&division=own&span-from=1.5&q=dluga&of=heron,tern');
  });

  it('passes over what the board does not hold', () => {
    const query =
      '?sort=-weight&division=heavy&builder=nobody&control=radio&span-from=wide&of=gone&rows=few&x=1';
    expect(readView(query, holds)).toEqual(wholeBoard);
    expect(readView('span-from=-1&span-to=Infinity', holds)).toEqual(wholeBoard);
  });

  it('holds no more aircraft to compare than stand side by side, each once', () => {
    const { picked } = readView('of=heron,heron,bittern,tern,wren,reedling', holds);
    expect(picked).toEqual(['heron', 'bittern', 'tern', 'wren']);
    expect(picked).toHaveLength(mostPicked);
  });

  it('gives back every view it was written from', () => {
    const length = fc.option(fc.double({ min: 0, max: 100, noNaN: true }).map((value) => Math.abs(value)));
    const view = fc.record({
      sort: fc.record({ column: fc.constantFrom(...sortColumns), largestFirst: fc.boolean() }),
      division: fc.option(fc.constantFrom(...holds.divisions)),
      builder: fc.option(fc.constantFrom(...holds.builders)),
      control: fc.option(fc.constantFrom(...holds.controls)),
      spanFrom: length,
      spanTo: length,
      sought: fc.string({ unit: 'grapheme' }).map((text) => text.trim()),
      full: fc.boolean(),
      picked: fc.uniqueArray(fc.constantFrom(...holds.entries), { maxLength: mostPicked }),
    });
    fc.assert(
      fc.property(view, (one) => {
        expect(readView(writeView(one), holds)).toEqual(one);
      }),
      { seed: 20_261_125 },
    );
  });
});
