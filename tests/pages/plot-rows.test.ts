import { describe, expect, it } from 'vitest';
import { shownRows } from '../../src/components/plot/shown-rows.ts';

describe('the table below a plot', () => {
  it('shows every one of a hundred aircraft', () => {
    expect(shownRows(Array.from({ length: 100 }, () => 30))).toHaveLength(100);
  });

  it('shows of more the hundred that stand highest, in the order of the plot', () => {
    // 0 to 129, mixed by steps of 7, which has no factor in common with 130: the heights 30 to 129 are a hundred.
    const heights = Array.from({ length: 130 }, (_, place) => (place * 7) % 130);
    const shown = shownRows(heights);
    expect(shown).toHaveLength(100);
    expect(Math.min(...shown.map((place) => heights[place]!))).toBe(30);
    expect(shown).toEqual([...shown].sort((a, b) => a - b));
  });
});
