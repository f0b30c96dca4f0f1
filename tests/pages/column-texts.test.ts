import { describe, expect, it } from 'vitest';
import { columnTexts } from '../../src/components/column-texts.ts';
import type { PresentFigure } from '../../src/figures/figure.ts';

const space = '\u00a0';

function span(value: number, u: number): PresentFigure {
  return { id: 'span', unit: 'm', value, u, basis: 'measured', assumptions: [], worked: [], shares: [] };
}

describe('a column of figures', () => {
  it('has one number of decimals, that of its least certain figure', () => {
    expect(columnTexts([[span(2.0071, 0.004)], [span(0.95, 0.02)], [span(5, 0.003)]], 'metric')).toEqual([
      `2.01${space}m`,
      `0.95${space}m`,
      `5.00${space}m`,
    ]);
  });

  it('is not made coarse by one figure that is hardly known', () => {
    const texts = columnTexts([[span(2.0071, 0.004)], [span(3.21, 0.002)], [span(4, 2)]], 'metric');
    expect(texts).toEqual([`2.01${space}m`, `3.21${space}m`, `4${space}m`]);
  });

  // 1 in = 25.4 mm exactly (international yard and pound agreement, 1959): 2.54 m are 100 in.
  it('stands in the other system where a site says so, and leaves out what is not known', () => {
    expect(columnTexts([[span(2.54, 0.0254)], []], 'imperial')).toEqual([`100${space}in`, null]);
  });

  it('sets the figures of several motors side by side, equal ones once', () => {
    const motors = [span(1, 0.001), span(1, 0.001), span(2, 0.001)];
    expect(columnTexts([motors], 'metric')).toEqual([`1.000${space}m / 2.000${space}m`]);
  });
});
