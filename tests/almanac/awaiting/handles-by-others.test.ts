import { describe, expect, it } from 'vitest';
import { handlesByOthers } from '../../../src/almanac/awaiting/handles-by-others.ts';

// Invented histories, read by hand.

const history = (file: string, first: number, ...authors: string[]) => ({
  file,
  first,
  authors: new Set(authors),
});
const old = { file: 'entries/one/plover/entry.md', handle: 'wren' };
const young = { file: 'entries/two/dunlin/entry.md', handle: 'wren' };

describe('a handle that only others had written', () => {
  it('is told of the later entry, with the files that came before', () => {
    const found = handlesByOthers([old, young], [history(old.file, 0, 'a@x'), history(young.file, 5, 'b@x')]);
    expect(found).toEqual([{ ...young, earlier: [old.file] }]);
  });

  it('is nothing to ask about where one author changed both files', () => {
    const both = [history(old.file, 0, 'a@x', 'c@x'), history(young.file, 5, 'b@x', 'c@x')];
    expect(handlesByOthers([old, young], both)).toEqual([]);
  });

  it('is nothing to ask about where the handle is new, or the files speak of different people', () => {
    const apart = [history(old.file, 0, 'a@x'), history(young.file, 5, 'b@x')];
    expect(handlesByOthers([young], apart)).toEqual([]);
    expect(handlesByOthers([{ ...old, handle: 'otter' }, young], apart)).toEqual([]);
  });

  it('passes over files that are not in the history yet', () => {
    expect(handlesByOthers([old, young], [history(old.file, 0, 'a@x')])).toEqual([]);
    expect(handlesByOthers([old, young], [history(young.file, 0, 'b@x')])).toEqual([]);
  });

  it('does not matter where both came in with one commit', () => {
    const together = [history(old.file, 3, 'a@x'), history(young.file, 3, 'b@x')];
    expect(handlesByOthers([old, young], together)).toEqual([]);
  });
});
