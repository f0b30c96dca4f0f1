import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boxOf, meet } from '../../../src/charts/placed-name.ts';
import { drawPlot, drawPointedAt } from '../../../src/charts/plot/draw-plot.ts';
import type { Plot, PlotPoint } from '../../../src/charts/plot/plot.ts';
import { insideOf, layOutPlot } from '../../../src/charts/plot/plot-layout.ts';

const size = { width: 400, height: 320 };
const names = { id: 'p', title: 'A plot', description: 'Of invented aircraft.' };

function point(id: string, x: number, y: number, changes: Partial<PlotPoint> = {}): PlotPoint {
  return { id, name: id, x, y, ux: 0, uy: 0, marked: false, waiting: false, ...changes };
}

function plot(points: readonly PlotPoint[], changes: Partial<Plot> = {}): Plot {
  return {
    x: { label: 'Loading (g/dm²)', logarithmic: false, better: 'less' },
    y: { label: 'Time (s)', logarithmic: false, better: 'more' },
    points,
    bars: false,
    ...changes,
  };
}

const logarithmic = { label: 'L', logarithmic: true, better: 'more' } as const;

describe('the layout of a plot', () => {
  it('puts a point between its ticks: more lies to the right and higher', () => {
    const layout = layOutPlot(plot([point('low', 2, 10), point('high', 8, 40)]), size);
    const [low, high] = layout.points;
    expect(high!.x).toBeGreaterThan(low!.x);
    expect(high!.y).toBeLessThan(low!.y);
    // By hand: 5 is halfway between 2 and 8 on a linear axis.
    expect(layout.x.scale.at(5)).toBeCloseTo((low!.x + high!.x) / 2, 1);
  });

  it('puts a single aircraft amid both axes', () => {
    const [only] = layOutPlot(plot([point('only', 5, 60)]), size).points;
    const { left, right, top, bottom } = layOutPlot(plot([point('only', 5, 60)]), size);
    expect(Math.abs(only!.x - (left + right) / 2)).toBeLessThan(60);
    expect(Math.abs(only!.y - (top + bottom) / 2)).toBeLessThan(60);
  });

  it('has axes with ticks where there is no aircraft', () => {
    const layout = layOutPlot(plot([]), size);
    expect(layout.x.scale.ticks.length).toBeGreaterThan(1);
    expect(drawPlot(layout, names)).toContain('chart-axis');
  });

  it('keeps an aircraft that waits for a ruling off the frontier', () => {
    const layout = layOutPlot(plot([point('sure', 5, 60), point('claimed', 4, 90, { waiting: true })]), size);
    expect(layout.points.map(({ best }) => best)).toEqual([true, false]);
  });

  it('has no frontier where neither end of an axis is the better', () => {
    const layout = layOutPlot(
      plot([point('a', 1, 1), point('b', 2, 2)], {
        x: { label: 'Aspect ratio', logarithmic: false, better: null },
      }),
      size,
    );
    expect(layout.frontier).toEqual([]);
    expect(layout.points.some(({ best }) => best)).toBe(false);
  });

  // By hand: less across and more up is better; the line leaves the first level and rises at the second.
  it('draws the frontier as stairs from each to the next', () => {
    const layout = layOutPlot(plot([point('a', 4, 60), point('b', 8, 120), point('c', 7, 50)]), size);
    const [a, b] = layout.points;
    expect(layout.frontier).toEqual([
      { x: a!.x, y: a!.y },
      { x: b!.x, y: a!.y },
      { x: b!.x, y: b!.y },
    ]);
  });

  it('cuts a ± that reaches zero on a logarithmic axis at its low end', () => {
    const layout = layOutPlot(plot([point('a', 5, 60, { ux: 6 })], { x: logarithmic, bars: true }), size);
    expect(layout.points[0]!.across![0]).toBeCloseTo(layout.left, 0);
  });

  it('draws no ± unless asked to, and none of an exact value', () => {
    const points = [point('a', 5, 60, { ux: 1 })];
    expect(layOutPlot(plot(points), size).points[0]!.across).toBeNull();
    const shown = layOutPlot(plot(points, { bars: true }), size).points[0]!;
    expect(shown.across).not.toBeNull();
    expect(shown.up).toBeNull();
  });

  it('names only the frontier among a thousand', () => {
    const many = Array.from({ length: 1000 }, (_, index) =>
      point(`m${index}`, 3 + ((index * 37) % 101) / 10, 20 + ((index * 61) % 211)),
    );
    const layout = layOutPlot(plot(many), size);
    const best = new Set(layout.points.filter(({ best }) => best).map(({ id }) => id));
    expect(best.size).toBeGreaterThan(0);
    expect([...layout.names.keys()].filter((id) => !best.has(id))).toEqual([]);
    expect(drawPlot(layout, names).match(/<path class="plot-dot/g)!.length).toBeLessThan(7);
  });
});

describe('any plot', () => {
  const value = fc.double({ min: 1e-3, max: 1e4, noNaN: true });
  const someone = fc.record({
    x: value,
    y: value,
    ux: value,
    uy: value,
    name: fc.string({ maxLength: 60 }),
    marked: fc.boolean(),
    waiting: fc.boolean(),
  });
  const plots = fc.record({
    points: fc.array(someone, { maxLength: 40 }),
    bars: fc.boolean(),
    logX: fc.boolean(),
    logY: fc.boolean(),
    width: fc.integer({ min: 280, max: 900 }),
  });

  it('keeps marks, their ± and names inside its box, and names apart', () => {
    fc.assert(
      fc.property(plots, ({ points, bars, logX, logY, width }) => {
        const layout = layOutPlot(
          plot(
            points.map((one, index) => ({ ...one, id: String(index) })),
            {
              bars,
              x: { label: 'x', logarithmic: logX, better: 'more' },
              y: { label: 'y', logarithmic: logY, better: 'less' },
            },
          ),
          { width, height: 360 },
        );
        for (const { x, y, across, up } of layout.points) {
          expect(Math.min(x, ...(across ?? []))).toBeGreaterThanOrEqual(layout.left);
          expect(Math.max(x, ...(across ?? []))).toBeLessThanOrEqual(layout.right);
          expect(Math.min(y, ...(up ?? []))).toBeGreaterThanOrEqual(layout.top);
          expect(Math.max(y, ...(up ?? []))).toBeLessThanOrEqual(layout.bottom);
        }
        const boxes = [...layout.names.values()].map(boxOf);
        const inside = insideOf(layout);
        for (const [index, box] of boxes.entries()) {
          expect(box.left).toBeGreaterThanOrEqual(inside.left);
          expect(box.right).toBeLessThanOrEqual(layout.width);
          expect(boxes.some((other, place) => place !== index && meet(box, other))).toBe(false);
        }
      }),
      { seed: 7, numRuns: 150 },
    );
  });
});

describe('the drawing of a plot', () => {
  it('escapes what people wrote', () => {
    const layout = layOutPlot(plot([point('a', 5, 60, { name: '<b>&"quick"' })]), size);
    expect(drawPlot(layout, names)).toContain('&lt;b&gt;&amp;&quot;quick&quot;');
    expect(drawPointedAt(layout, 'a')).not.toContain('<b>');
  });

  it('has a title and a description', () => {
    const svg = drawPlot(layOutPlot(plot([]), size), names);
    expect(svg).toContain('role="img"');
    expect(svg).toContain('<title id="p-title">A plot</title>');
  });

  it('points at nobody who is not there', () => {
    expect(drawPointedAt(layOutPlot(plot([]), size), 'gone')).toBe('');
  });
});
