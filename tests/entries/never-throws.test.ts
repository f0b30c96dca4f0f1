import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { batch } from '../../src/entries/schema/batch.ts';
import { challenge } from '../../src/entries/schema/challenge.ts';
import { entry } from '../../src/entries/schema/entry.ts';
import { keysAt } from '../../src/entries/schema/field-at.ts';
import { ruling } from '../../src/entries/schema/ruling.ts';
import { readSource } from '../../src/entries/source/read-source.ts';
import { splitPlain } from '../../src/entries/source/split-plain.ts';
import { understandBatch } from '../../src/entries/understand/batch.ts';
import { understandChallenge } from '../../src/entries/understand/challenge.ts';
import { understandEntry } from '../../src/entries/understand/entry.ts';
import { understandRuling } from '../../src/entries/understand/ruling.ts';

// A law, not an example: whatever is written, either there is a meaning, or an error says why not.

const inner = [
  'wing',
  'span',
  'area',
  'panels',
  'mass',
  'airframe',
  'skein',
  'motors',
  'flights',
  'number',
  'date',
  'time',
  'turns',
  'setup',
  'setups',
  'id',
  'from',
  'by',
  'scale',
  'flight',
  'as-ruled',
  'onboard',
  '__proto__',
  'constructor',
];
const scalar = fc.constantFrom(
  '',
  '1',
  '3.2 m',
  '12 s',
  '100 g',
  '54 x 10',
  '2027-05-09',
  'none',
  'free',
  'b',
  'at least 2 m',
  '38 %',
  '-1',
  '1,200 mm',
  '…',
  'stabiliser',
  'rounds',
);

function written(keys: readonly string[]) {
  const tree = fc.letrec((tie) => ({
    value: fc.oneof({ depthSize: 'small', maxDepth: 4 }, scalar, tie('list'), tie('map')),
    list: fc.array(tie('value'), { maxLength: 3 }),
    map: fc.dictionary(fc.constantFrom(...inner), tie('value'), { maxKeys: 4 }),
  }));
  return fc.dictionary(fc.constantFrom(...keys, ...inner), tree.value, {
    maxKeys: 12,
    noNullPrototype: false,
  });
}

const kinds = {
  entry: {
    keys: keysAt(entry, []),
    understand: (source: Source) => understandEntry(source, { challenge: 'c', id: 'e' }),
  },
  challenge: {
    keys: keysAt(challenge, []),
    understand: (source: Source) => understandChallenge(source, { id: 'c' }),
  },
  ruling: {
    keys: keysAt(ruling, []),
    understand: (source: Source) => understandRuling(source, { challenge: 'c', entry: 'e' }),
  },
  batch: { keys: keysAt(batch, []), understand: (source: Source) => understandBatch(source, { id: 'b' }) },
};

type Source = NonNullable<ReturnType<typeof readSource>['source']>;

describe('whatever is written', () => {
  for (const [name, { keys, understand }] of Object.entries(kinds))
    it(`in a file of the kind ${name} has a meaning, or an error that says why not`, () => {
      let understood = 0;
      fc.assert(
        fc.property(written(keys), (fields) => {
          // JSON is YAML; its texts stay what they are.
          const { source, problems } = readSource(
            'file.md',
            `---\n${JSON.stringify(fields)}\n---\n`,
            splitPlain,
          );
          if (source === null || problems.length > 0) return;
          understood++;
          const { problems: found, ...meaning } = understand(source);
          const errors = found.filter(({ severity }) => severity === 'error');
          expect(Object.values(meaning)[0] === null).toBe(errors.length > 0);
          for (const { line, column, message } of found) {
            expect(line).toBeGreaterThan(0);
            expect(column).toBeGreaterThan(0);
            expect(message).not.toMatch(/undefined|\[object|NaN/);
          }
        }),
        { seed: 20270509, numRuns: 600 },
      );
      expect(understood).toBeGreaterThan(300);
    });
});
