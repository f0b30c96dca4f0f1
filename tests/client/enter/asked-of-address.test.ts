import { describe, expect, it } from 'vitest';
import { askedOf } from '../../../src/client/enter/asked-of-address.ts';

// What an address may ask for is the project's own.

describe('what the address of the form asks for', () => {
  it('is nothing where nothing is named', () => {
    expect(askedOf('')).toEqual({ challenge: null, entry: null });
  });

  it('is a challenge, or an aircraft of one', () => {
    expect(askedOf('?challenge=summer-2027')).toEqual({ challenge: 'summer-2027', entry: null });
    expect(askedOf('?entry=summer-2027%2Fheron')).toEqual({
      challenge: null,
      entry: { challenge: 'summer-2027', entry: 'heron' },
    });
  });

  it.for(['heron', 'a/b/c', '/heron', 'a/', '../a', '..%2F..', 'A/b', 'a/b?c', 'a/<b>', '//host.example/a'])(
    'is no aircraft where that names no folder: %s',
    (entry) => {
      expect(askedOf(`?entry=${entry}`).entry).toBe(null);
    },
  );

  it('is no challenge where that names no folder', () => {
    expect(askedOf('?challenge=../a').challenge).toBe(null);
  });
});
