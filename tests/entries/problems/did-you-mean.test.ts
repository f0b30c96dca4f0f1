import { describe, expect, it } from 'vitest';
import { didYouMean } from '../../../src/entries/problems/did-you-mean.ts';

const keys = ['span', 'area', 'chord', 'dihedral', 'launch-height', 'launch', 'break-turns'];

describe('didYouMean', () => {
  it('finds one letter added, left out, changed, or two swapped', () => {
    expect(didYouMean('spann', keys)).toBe('span');
    expect(didYouMean('dihedrl', keys)).toBe('dihedral');
    expect(didYouMean('cherd', keys)).toBe('chord');
    expect(didYouMean('aera', keys)).toBe('area');
  });

  it('looks past case, hyphens, underscores and spaces', () => {
    expect(didYouMean('Launch_Height', keys)).toBe('launch-height');
    expect(didYouMean('breakturns', keys)).toBe('break-turns');
  });

  it('offers nothing where nothing is near', () => {
    expect(didYouMean('colour', keys)).toBeNull();
    expect(didYouMean('x', ['y'])).toBeNull();
    expect(didYouMean('', keys)).toBeNull();
    expect(didYouMean('span', [])).toBeNull();
    expect(didYouMean('a'.repeat(10_000), keys)).toBeNull();
  });
});
