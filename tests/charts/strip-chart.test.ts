import { describe, expect, it } from 'vitest';
import { drawStripChart } from '../../src/charts/draw-strip-chart.ts';
import { layOutStrip, type StripChart, type StripMark } from '../../src/charts/strip-chart.ts';

function mark(value: number, changes: Partial<StripMark> = {}): StripMark {
  return { value, u: 0, kind: 'accepted', best: false, ...changes };
}

function strip(changes: Partial<StripChart> = {}): StripChart {
  return { label: 'Seconds', marks: [], band: null, middle: null, ...changes };
}

describe('values beside a band', () => {
  it('stand on an axis from nothing to the largest', () => {
    const { marks, left, right } = layOutStrip(strip({ marks: [mark(0), mark(50), mark(100)] }));
    expect(marks.map(({ x }) => x)).toEqual([left, (left + right) / 2, right]);
  });

  it('are stacked where they would lie over one another', () => {
    const { marks } = layOutStrip(strip({ marks: [mark(50), mark(50), mark(100), mark(50)] }));
    expect(marks[0]!.y).toBe(marks[2]!.y);
    expect(marks[1]!.y).toBeLessThan(marks[0]!.y);
    expect(marks[3]!.y).toBeLessThan(marks[1]!.y);
  });

  it('stay inside however many are equal', () => {
    const { marks, top, bottom } = layOutStrip(strip({ marks: Array.from({ length: 200 }, () => mark(7)) }));
    for (const { y } of marks) {
      expect(y).toBeGreaterThanOrEqual(top);
      expect(y).toBeLessThanOrEqual(bottom);
    }
  });

  it('have the band cut off at nothing, and its middle within', () => {
    const { band, middle, left, right } = layOutStrip(
      strip({ band: { low: -20, high: 100, name: 'window' }, middle: { value: 40, name: '40' } }),
    );
    expect(band!.left).toBe(left);
    expect(band!.right).toBe(right);
    // By hand: 12 + 0.4 × 456.
    expect(middle!.x).toBeCloseTo(194.4, 1);
  });

  it('keep the names of band and middle apart', () => {
    const { band, middle } = layOutStrip(
      strip({ band: { low: 30, high: 50, name: '30 to 50' }, middle: { value: 40, name: '40' } }),
    );
    expect(middle!.name!.at.y - band!.name.at.y).toBeGreaterThanOrEqual(20);
  });

  it('show the ± of the best where it is more than its mark', () => {
    const { bars } = layOutStrip(
      strip({ marks: [mark(50, { u: 20, best: true }), mark(90, { u: 20 }), mark(100)] }),
    );
    expect(bars).toHaveLength(1);
  });

  it.each([
    ['nothing', strip()],
    ['one value of nothing', strip({ marks: [mark(0, { best: true })] })],
    ['a band of no width', strip({ band: { low: 5, high: 5, name: 'five' }, marks: [mark(5)] })],
    ['one second beside nine hundred', strip({ marks: [mark(1), mark(900)] })],
  ])('come out whole with %s', (_, chart) => {
    const svg = drawStripChart(layOutStrip(chart), { id: 's', title: 'T', description: 'D' });
    expect(svg).not.toMatch(/NaN|Infinity/);
  });
});
