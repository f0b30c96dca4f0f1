import { describe, expect, it } from 'vitest';
import { treloarEnergy, treloarPoints } from '../../src/rubber/treloar.ts';

describe('Treloar’s rubber', () => {
  // Areas by trapezoid under the published points of L. R. G. Treloar, Trans. Faraday Soc. 40 (1944) 59, in J/m³.
  it.each([
    [7.6, 11.862264e6],
    [7.05, 9.070555e6],
    [6.15, 6.020442e6],
    [5.36, 4.188315e6],
    [3.02, 1.049795e6],
  ])('holds the published work up to a stretch of %f', (ratio, work) => {
    expect(treloarEnergy(ratio) / work).toBeCloseTo(1, 6);
  });

  it('gives 12.755 J/g at 0.93 g/cm³ when stretched to its last point', () => {
    expect(treloarEnergy(7.6) / 930 / 1000).toBeCloseTo(12.755, 3);
  });

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
