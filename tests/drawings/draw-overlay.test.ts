import { describe, expect, it } from 'vitest';
import { drawOverlay, type Overlaid } from '../../src/drawings/draw-overlay.ts';
import { narrow, wide } from '../../src/drawings/paper.ts';
import { shapeOf, trapezoid } from './fixture.ts';
import { pathsOf, pointsOf, sizeOf } from './sheet-numbers.ts';

const names = { id: 'over', title: 'Two of them', description: 'Over each other.' };
const aircraft = (name: string, k: number): Overlaid => ({
  name,
  shape: shapeOf(trapezoid(k)),
  span: { metric: `${2 * k} m`, imperial: `${k} ft` },
});

/** The wing of an overlaid aircraft: the first eight points of its path. */
function wingOf(svg: string, place: string) {
  const [data = ''] = pathsOf(svg, `overlaid ${place}`);
  return pointsOf(`<path d="${data}"/>`).slice(0, 8);
}

describe('drawOverlay', () => {
  const svg = drawOverlay([aircraft('Reed', 1), aircraft('Rush', 2)], wide, names);

  it('draws all to one scale', () => {
    const width = (place: string) => {
      const xs = wingOf(svg, place).map(({ x }) => x);
      return Math.max(...xs) - Math.min(...xs);
    };
    expect(width('second') / width('first')).toBeCloseTo(2, 2);
  });

  // By hand: the quarter-chord lies 0.07778 m behind the leading edge of the small wing and 0.15556 m behind that of the
  // large one, and the large span of 4 m takes at most 632: between the leading edges are 0.07778 m of the same scale.
  it('lays the quarter-chords on one line', () => {
    const xs = wingOf(svg, 'second').map(({ x }) => x);
    const scale = (Math.max(...xs) - Math.min(...xs)) / 4;
    const front = (place: string) => Math.min(...wingOf(svg, place).map(({ y }) => y));
    expect((front('first') - front('second')) / scale).toBeCloseTo(0.0777778, 2);
  });

  it('has a key with each name and span, and a line of its own for each', () => {
    expect(svg).toContain('Reed, 2 m');
    expect(svg).toContain('Rush, 2 ft');
    for (const place of ['first', 'second']) expect(pathsOf(svg, `overlaid ${place}`)).toHaveLength(2);
  });

  it('leaves out a fifth aircraft and no fourth', () => {
    const five = drawOverlay(
      [1, 2, 3, 4, 5].map((k) => aircraft(`No. ${k}`, k)),
      wide,
      names,
    );
    expect(five).toContain('No. 4, 8 m');
    expect(five).not.toContain('No. 5, 10 m');
  });

  it('keeps everything on the sheet, on both kinds of paper', () => {
    for (const paper of [wide, narrow]) {
      const both = drawOverlay([aircraft('Reed', 1), aircraft('Rush', 2)], paper, names);
      const { width, height } = sizeOf(both);
      for (const { x, y } of pointsOf(both)) {
        expect(x).toBeGreaterThanOrEqual(0);
        expect(x).toBeLessThanOrEqual(width);
        expect(y).toBeGreaterThanOrEqual(0);
        expect(y).toBeLessThanOrEqual(height);
      }
    }
  });

  it('escapes names, and cuts one that is too long for the key', () => {
    const one = drawOverlay(
      [aircraft('<b>"Reed" & Rush</b>', 1), aircraft('Long'.repeat(60), 1)],
      narrow,
      names,
    );
    expect(one).toContain('&lt;b&gt;&quot;Reed&quot; &amp; Rush&lt;/b&gt;, 2 m');
    expect(one).not.toContain('<b>');
    expect(one).toMatch(/(?:Long)+L?o?n?…, 2 m</);
  });
});
