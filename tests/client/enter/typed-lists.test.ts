import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { motorsOf } from '../../../src/client/enter/per-motor.ts';
import { splitItems } from '../../../src/client/enter/split-items.ts';
import { typedInList } from '../../../src/client/enter/typed-in.ts';

describe('several values in one text', () => {
  it.for([
    ['41.6 s, 45.6 s', ['41.6 s', '45.6 s']],
    ['41,6 s', ['41,6 s']],
    ['41,6 s, 45,6 s', ['41,6 s', '45,6 s']],
    ['41,6, 45,6', ['41,6', '45,6']],
    ['41,6 s; 45,6 s', ['41,6 s', '45,6 s']],
    ['[41.62 s, "41,80 s"]', ['41.62 s', '41,80 s']],
    ['1:05,3', ['1:05,3']],
    ['840, 830', ['840', '830']],
    ['otter, heron', ['otter', 'heron']],
    ['otter,heron,', ['otter', 'heron']],
    ['54 x 10, 52 x 10', ['54 x 10', '52 x 10']],
    ['https://video.example/a,b', ['https://video.example/a,b']],
    [
      'https://video.example/a, https://video.example/b',
      ['https://video.example/a', 'https://video.example/b'],
    ],
    [' ', []],
    ['[', ['[']],
  ] as const)('are parted where they end: %s', ([typed, items]) => {
    expect(splitItems(typed)).toEqual(items);
  });

  // A law: what has been parted is not parted further.
  it('are whole afterwards', () => {
    fc.assert(
      fc.property(
        fc.string({ unit: fc.constantFrom('4', '1', ',', ' ', ';', 'a', '.'), maxLength: 20 }),
        (typed) => {
          for (const item of splitItems(typed)) expect(splitItems(item)).toEqual([item]);
        },
      ),
      { seed: 20261125, numRuns: 500 },
    );
  });
});

describe('a box of a list', () => {
  const watches = (place: number) => ['flights', 0, 'watches', place];
  const turns = (place: number) => ['flights', 0, 'turns', place];

  it('is one item', () => {
    expect(typedInList(watches(1), ['41.6 s', '41,8 s', ''])).toEqual({ path: watches(1), value: '41,8 s' });
    expect(typedInList(watches(0), ['', '41,8 s', ''])).toEqual({ path: watches(0), value: null });
  });

  it('is several where they were typed into it, once it is left', () => {
    expect(typedInList(watches(1), ['41.6 s', '41.8 s, 41.9 s', '42 s', ''])).toEqual({
      path: ['flights', 0, 'watches'],
      value: ['41.6 s', '41.8 s', '41.9 s', '42 s'],
      whenLeft: true,
    });
  });

  it('waits for the motors before it', () => {
    const second = typedInList(turns(1), ['', '830']);
    expect(second.refused).toMatch(/^Fill in the motors in their order/);
    expect(typedInList(turns(0), ['840', '830'])).toEqual({
      path: ['flights', 0, 'turns'],
      value: ['840', '830'],
    });
    expect(typedInList(turns(0), ['840', ''])).toEqual({ path: turns(0), value: '840' });
  });
});

describe('how many motors a flight is asked about', () => {
  it('is as many as any of the setups has', () => {
    expect(motorsOf({})).toBe(1);
    expect(motorsOf({ motors: [{ count: '1' }, { count: '1' }] })).toBe(2);
    expect(motorsOf({ motors: { count: '4' } })).toBe(1);
    expect(motorsOf({ motors: [{}, {}], setups: [{ id: 'b' }, { id: 'c', motors: [{}, {}, {}] }] })).toBe(3);
  });
});
