import { describe, expect, it } from 'vitest';
import { drawLineChart } from '../../src/charts/draw-line-chart.ts';
import { layOutLineChart } from '../../src/charts/line-chart.ts';
import {
  type StretchWays,
  stretchChart,
  stretchReach,
  stretchReadings,
  stretchWays,
} from '../../src/charts/stretch-chart.ts';
import { stretchTest } from '../figures/example-design.ts';

const words = { stretch: 'Stretch', force: 'Force', out: 'out', back: 'back', broke: 'broke' };
const names = { id: 'c', title: 'a <thin> & "soft" strip', description: 'd' };

function ways(points: readonly { ratio: number; force: number }[]): StretchWays {
  const found = stretchWays(stretchTest({ points }));
  if (found === null) throw new Error('the test has points');
  return found;
}

function drawn(of: StretchWays, broke = false): string {
  return drawLineChart(layOutLineChart(stretchChart(of, stretchReach([of]), broke, words)), names);
}

/** Area below a way by counting trapezoids. */
function area(points: readonly { x: number; y: number }[]): number {
  return points
    .slice(1)
    .reduce((sum, { x, y }, index) => sum + (x - points[index]!.x) * ((y + points[index]!.y) / 2), 0);
}

describe('the curve of a stretch test', () => {
  const { out, back } = stretchWays(stretchTest())!;

  it('has the energy per gram below it', () => {
    // By hand: 0.33 g on 100 mm are 3.3 g/m. Out: 2·4/2 + 4·(4 + 16)/2 = 44 N; 44 N · 0.1 m / 0.33 g = 13.333 J/g.
    expect(area(out)).toBeCloseTo(13.3333, 4);
    // Back: 4·(16 + 3)/2 + 2·3/2 = 41 N → 12.424 J/g.
    expect(-area(back)).toBeCloseTo(12.4242, 4);
  });

  it('is read at round stretches and at the top', () => {
    // By hand: at 2 the force is 2 N out and 1.5 N back, at 4 it is 7 and 6.25 N, each over 3.3 g/m.
    const rows = stretchReadings({ out, back });
    expect(rows.map(({ ratio }) => ratio)).toEqual([1, 2, 3, 4, 5, 6, 7]);
    expect(rows[1]!.out).toBeCloseTo(2 / 3.3, 10);
    expect(rows[1]!.back).toBeCloseTo(1.5 / 3.3, 10);
    expect(rows[3]!.out).toBeCloseTo(7 / 3.3, 10);
    expect(rows[3]!.back).toBeCloseTo(6.25 / 3.3, 10);
    expect(rows[6]!.out).toBe(rows[6]!.back);
  });

  it('tells out from back by dashes and by words, not by colour alone', () => {
    const svg = drawn({ out, back });
    expect(svg.match(/class="chart-line (out|back)"/g)).toEqual([
      'class="chart-line out"',
      'class="chart-line back"',
    ]);
    expect(svg).toContain('>out</text>');
    expect(svg).toContain('>back</text>');
    expect(svg).not.toContain('style=');
  });

  it('has a title and a description, with the signs of markup written as text', () => {
    const svg = drawn({ out, back });
    expect(svg).toContain('role="img" aria-labelledby="c-title c-description"');
    expect(svg).toContain('<title id="c-title">a &lt;thin&gt; &amp; &quot;soft&quot; strip</title>');
  });

  it('marks a break', () => {
    expect(drawn({ out, back }, true)).toContain('chart-mark');
    expect(drawn({ out, back })).not.toContain('chart-mark');
  });

  it('stands within its frame', () => {
    const layout = layOutLineChart(stretchChart({ out, back }, stretchReach([{ out, back }]), true, words));
    for (const { points } of layout.lines)
      for (const { x, y } of points) {
        expect(x).toBeGreaterThanOrEqual(layout.left);
        expect(x).toBeLessThanOrEqual(layout.right);
        expect(y).toBeGreaterThanOrEqual(layout.top);
        expect(y).toBeLessThanOrEqual(layout.bottom);
      }
    // Slack lies in the corner of the axes.
    expect(layout.lines[0]!.points[0]).toEqual({ x: layout.left, y: layout.bottom });
  });
});

describe('a stretch test with little in it', () => {
  it('is not drawn where its log could not be read', () => {
    expect(stretchWays(stretchTest({ points: null }))).toBeNull();
  });

  it('without readings has axes only', () => {
    const none = ways([]);
    expect(stretchReadings(none)).toEqual([]);
    expect(drawn(none, true)).not.toMatch(/chart-line|chart-dot|chart-mark|NaN|Infinity/);
  });

  it('of one reading is a dot', () => {
    const one = ways([{ ratio: 3, force: 3.3 }]);
    expect(stretchReadings(one)).toHaveLength(1);
    const svg = drawn(one);
    expect(svg).toContain('<circle class="chart-dot"');
    expect(svg).not.toMatch(/NaN|Infinity/);
  });

  it('of equal readings has axes all the same', () => {
    const slack = { ratio: 1, force: 0 };
    const svg = drawn(ways([slack, slack, slack]));
    expect(svg).not.toMatch(/NaN|Infinity/);
    expect(svg).toContain('>1.0</text>');
  });

  it('that ends at the top has one line without a name', () => {
    const svg = drawn(
      ways([
        { ratio: 1, force: 0 },
        { ratio: 4, force: 5 },
      ]),
    );
    expect(svg.match(/class="chart-line/g)).toHaveLength(1);
    expect(svg).not.toContain('>out</text>');
  });
});
