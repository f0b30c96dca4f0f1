import { describe, expect, it } from 'vitest';
import { drawThrowsChart } from '../../src/charts/draw-throws-chart.ts';
import { balanceMoved, layOutThrows, shownThrows, type ThrowsLayout } from '../../src/charts/throws-chart.ts';
import type { Glide } from '../../src/model/entry.ts';
import { glide, measured } from '../figures/example-design.ts';

const words = {
  ratio: 'Ratio',
  balance: 'mm',
  order: 'order',
  day: (date: string | null) => date ?? 'undated',
};
/** One inch is 25.4 mm, exactly. */
const inches = { label: 'in', per: 1 / 25.4 };

function thrown(distance: number, balance: number | null, changes: Partial<Glide> = {}): Glide {
  return glide({
    height: measured('length', 3, 0.01),
    distance: measured('length', distance, 0.1),
    balance: balance === null ? null : measured('length', balance, 0.002),
    ...changes,
  });
}

function laidOut(glides: readonly Glide[]): ThrowsLayout {
  return layOutThrows(shownThrows(glides), words, inches);
}

describe('the throws of test glides', () => {
  it('tell distance over height, good to a fifth', () => {
    // By hand: 30 m over 3 m; a fifth of 10 is more than the readings leave open.
    const [only] = shownThrows([thrown(30, null)]);
    expect(only!.ratio).toBe(10);
    expect(only!.u).toBeCloseTo(2, 10);
  });

  it('leave out what does not tell both, or nothing above nothing', () => {
    const none = { ...thrown(30, null), height: null };
    const flat = { ...thrown(30, null), height: measured('length', 0, 0.01) };
    expect(shownThrows([none, flat, { ...thrown(30, null), distance: null }])).toEqual([]);
  });

  it('stand at their balance where it was moved', () => {
    const layout = laidOut([thrown(30, 0.07), thrown(36, 0.09)]);
    expect(layout.across.label).toBe('mm');
    expect(layout.across.ticks.map(({ text }) => text)).toEqual(['70', '75', '80', '85', '90']);
    expect(layout.marks.map(({ x }) => x)).toEqual([layout.left, layout.right]);
    // 2.8 to 3.5 in: 70 mm are 2.76 in, 90 mm are 3.54 in.
    expect(layout.imperial!.ticks.map(({ text }) => text)).toEqual(['2.8', '3.0', '3.2', '3.4']);
  });

  it('stand evenly in the order of their dates where it was not, undated ones first', () => {
    const glides = [
      thrown(30, 0.07, { date: '2031-05-02' }),
      thrown(36, 0.07, { date: null }),
      thrown(33, 0.07, { date: '2031-04' }),
    ];
    expect(shownThrows(glides).map(({ date }) => date)).toEqual([null, '2031-04', '2031-05-02']);
    const layout = laidOut(glides);
    expect(layout.across.label).toBe('order');
    expect(layout.imperial).toBeNull();
    const [a, b, c] = layout.marks.map(({ x }) => x);
    expect(b! - a!).toBeCloseTo(c! - b!, 1);
  });

  it('do not take a balance that one of them does not tell', () => {
    expect(balanceMoved(shownThrows([thrown(30, 0.07), thrown(36, null), thrown(36, 0.09)]))).toBe(false);
  });

  it('have an open mark where they did not go cleanly', () => {
    const kinds = laidOut([thrown(30, null), thrown(30, null, { behaviour: ['stalled'] })]).marks.map(
      ({ kind }) => kind,
    );
    expect(kinds).toEqual(['accepted', 'provisional']);
  });

  it.each([
    ['none', []],
    ['one', [thrown(30, 0.07)]],
    ['equal ones', [thrown(30, 0.07), thrown(30, 0.07)]],
  ])('come out whole with %s', (_, glides) => {
    expect(drawThrowsChart(laidOut(glides), { id: 't', title: 'T', description: 'D' })).not.toMatch(
      /NaN|Infinity/,
    );
  });
});
