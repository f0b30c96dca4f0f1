import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readLine } from '../../src/charts/read-line.ts';
import { thinned } from '../../src/charts/thinned.ts';

describe('a thinned line', () => {
  it('keeps first, lowest, highest and last of each column', () => {
    const points = [5, 3, 4, 9, 6, 7].map((y, index) => ({ x: index / 10, y }));
    expect(thinned(points, 1).map(({ y }) => y)).toEqual([5, 3, 9, 7]);
  });

  it('of a long log stays short, whole in height and in order', () => {
    const point = fc.record({
      x: fc.double({ min: 0, max: 100, noNaN: true }),
      y: fc.double({ min: -5, max: 5, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(point, { minLength: 1, maxLength: 2000 }), (unsorted) => {
        const points = [...unsorted].sort((a, b) => a.x - b.x);
        const kept = thinned(points, 1);
        expect(kept.length).toBeLessThanOrEqual(4 * 101);
        const heights = (line: typeof points) => line.map(({ y }) => y);
        expect(Math.max(...heights([...kept]))).toBe(Math.max(...heights(points)));
        expect(Math.min(...heights([...kept]))).toBe(Math.min(...heights(points)));
        expect(kept.every((one, index) => index === 0 || kept[index - 1]!.x <= one.x)).toBe(true);
        expect([kept[0], kept.at(-1)]).toEqual([points[0], points.at(-1)]);
      }),
      { seed: 99, numRuns: 60 },
    );
  });
});

describe('reading a line', () => {
  const line = [
    { x: 0, y: 0 },
    { x: 2, y: 4 },
    { x: 2, y: 6 },
    { x: 4, y: 6 },
  ];

  it('goes straight between two readings, and takes the first of two at one place', () => {
    expect(readLine(line, 1)).toBe(2);
    expect(readLine(line, 2)).toBe(4);
    expect(readLine(line.toReversed(), 2)).toBe(6);
  });

  it('has nothing to say beyond its ends', () => {
    expect(readLine(line, 4.1)).toBeNull();
    expect(readLine([], 1)).toBeNull();
  });
});
