import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { throwVerdicts } from '../../src/flight/throw-verdict.ts';
import type { Behaviour } from '../../src/model/entry.ts';

// What a throw says of the trim is common practice, no source.
const cases: readonly [readonly Behaviour[], readonly string[]][] = [
  [[], []],
  [['clean'], ['fine']],
  [['stalled'], ['tail-heavy']],
  [['dived'], ['nose-heavy']],
  [['stalled', 'dived'], ['tail-heavy']],
  [['dived', 'stalled'], ['tail-heavy']],
  [['spiralled-left'], ['left']],
  [['spiralled-right'], ['right']],
  [
    ['dived', 'spiralled-right'],
    ['nose-heavy', 'right'],
  ],
  [['rolled'], ['rolled']],
  [['clean', 'stalled'], ['tail-heavy']],
  [['gust'], ['disturbed']],
  [['clean', 'gust'], ['disturbed']],
  [['stalled', 'gust'], ['disturbed']],
];

describe('what a throw says', () => {
  it.each(cases)('%j: %j', (behaviour, verdicts) => {
    expect(throwVerdicts(behaviour)).toEqual(verdicts);
  });

  it('never calls a throw fine that was anything but clean', () => {
    const all: Behaviour[] = [
      'clean',
      'stalled',
      'dived',
      'spiralled-left',
      'spiralled-right',
      'rolled',
      'gust',
    ];
    fc.assert(
      fc.property(fc.subarray(all, { minLength: 1 }), (behaviour) => {
        const fine = throwVerdicts(behaviour).includes('fine');
        expect(fine).toBe(behaviour.length === 1 && behaviour[0] === 'clean');
      }),
      { seed: 7, numRuns: 200 },
    );
  });
});
