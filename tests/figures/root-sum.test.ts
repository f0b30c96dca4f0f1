import { describe, expect, it } from 'vitest';
import { rootSum } from '../../src/figures/root-sum.ts';

describe('the root sum of squares', () => {
  it('says who has which share of the variance, the largest first', () => {
    // 3² + 4² = 5²: shares 9/25 and 16/25.
    const { u, shares } = rootSum([
      { input: 'a', change: 3 },
      { input: 'b', change: -4 },
    ]);
    expect(u).toBe(5);
    expect(shares).toEqual([
      { input: 'b', share: 16 / 25 },
      { input: 'a', share: 9 / 25 },
    ]);
  });

  it('merges inputs of one name by their variances', () => {
    const { shares } = rootSum([
      { input: 'chords', change: 3 },
      { input: 'chords', change: 4 },
    ]);
    expect(shares).toEqual([{ input: 'chords', share: 1 }]);
  });

  it('is zero without contributions', () => {
    expect(rootSum([])).toEqual({ u: 0, shares: [] });
    expect(rootSum([{ input: 'a', change: 0 }])).toEqual({ u: 0, shares: [] });
  });
});
