import { describe, expect, it } from 'vitest';
import { treloarEnergy, treloarPoints } from '../../src/rubber/treloar.ts';

describe('Treloar’s rubber', () => {
  it('goes on with its last slope beyond the last point', () => {
    // From 7.6 to 7.7 the stress rises from 64.4 by (64.4 − 57)/0.1 · 0.1 to 71.8: 0.1 · 68.1 kgf/cm², 98066.5 Pa each.
    expect(treloarEnergy(7.7) - treloarEnergy(7.6)).toBeCloseTo(0.1 * 68.1 * 98_066.5, 3);
  });

  it('holds nothing while slack, and ever more with each stretch', () => {
    expect(treloarEnergy(1)).toBe(0);
    expect(treloarEnergy(0.5)).toBe(0);
    const works = treloarPoints.map(([ratio]) => treloarEnergy(ratio));
    expect(works).toEqual([...works].sort((a, b) => a - b));
  });
});
