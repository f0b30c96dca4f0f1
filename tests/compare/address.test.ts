import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { choiceQuery, readChoice } from '../../src/compare/address.ts';

const known = new Set(['spring/heron', 'spring/bittern', 'spring/otter', 'autumn/heron', 'autumn/plover']);

describe('the address of a comparison', () => {
  it('names aircraft in their order', () => {
    expect(choiceQuery(['spring/heron', 'autumn/heron'])).toBe('?of=spring/heron,autumn/heron');
    expect(choiceQuery([])).toBe('');
    expect(readChoice('?of=autumn/heron,spring/heron', known).chosen).toEqual([
      'autumn/heron',
      'spring/heron',
    ]);
  });

  it('may be written with signs escaped, as some programs do', () => {
    expect(readChoice('?of=spring%2Fheron%2Cspring%2Fbittern', known).chosen).toEqual([
      'spring/heron',
      'spring/bittern',
    ]);
  });

  it('keeps each once, and tells what is not there', () => {
    const choice = readChoice('?of=spring/heron,spring/heron,spring/wader,spring/wader,', known);
    expect(choice).toEqual({ chosen: ['spring/heron'], unknown: ['spring/wader'], tooMany: false });
  });

  it('takes the first four, and says that there were more', () => {
    const choice = readChoice(`?of=${[...known].join(',')}`, known);
    expect(choice.chosen).toEqual([...known].slice(0, 4));
    expect(choice.tooMany).toBe(true);
  });

  it('is read back as it was written', () => {
    const some = fc.uniqueArray(fc.constantFrom(...known), { maxLength: 4 });
    fc.assert(
      fc.property(some, (ids) => {
        expect(readChoice(choiceQuery(ids), known)).toEqual({ chosen: ids, unknown: [], tooMany: false });
      }),
      { seed: 20261125 },
    );
  });

  it('never throws, whatever stands in it', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 40 }), (text) => {
        expect(readChoice(`?of=${text}`, known).chosen.length).toBeLessThanOrEqual(4);
      }),
      { seed: 20261125 },
    );
  });
});
