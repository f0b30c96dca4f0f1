import { describe, expect, it } from 'vitest';
import { acceptedForms, exampleOf, exampleWithUncertainty, nounOf } from '../../src/quantities/accepted.ts';
import { parseQuantity } from '../../src/quantities/parse.ts';
import { kinds } from './kinds.ts';

describe('what a message offers', () => {
  it.each(kinds)('%s: every example is accepted', (kind) => {
    const examples = [...acceptedForms(kind).matchAll(/"([^"]+)"/g)].map((match) => match[1] ?? '');
    expect(examples.length).toBeGreaterThan(0);
    for (const example of [...examples, exampleOf(kind), exampleWithUncertainty(kind)]) {
      expect([example, parseQuantity(example, kind).ok]).toEqual([example, true]);
    }
    expect(acceptedForms(kind)).toContain(nounOf(kind));
  });
});
