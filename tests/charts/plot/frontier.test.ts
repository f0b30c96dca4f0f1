import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Better, frontier } from '../../../src/charts/plot/frontier.ts';

interface Point {
  readonly x: number;
  readonly y: number;
}

// Invented: a loading across and a time up. Drawn on paper, C lies left of and above B, D below all.
const a = { x: 4, y: 60 };
const b = { x: 6, y: 90 };
const c = { x: 5, y: 95 };
const d = { x: 9, y: 50 };
const e = { x: 8, y: 120 };

describe('the frontier, by hand', () => {
  it('keeps who is not beaten, where less across and more up is better', () => {
    expect(frontier([a, b, c, d, e], 'less', 'more')).toEqual([a, c, e]);
  });

  it('turns with the direction of the better: more across and more up leaves those at the upper right', () => {
    expect(frontier([a, b, c, d, e], 'more', 'more')).toEqual([d, e]);
  });

  it('keeps both of two equal points, and none that is equal in one and worse in the other', () => {
    const twin = { ...a };
    const lower = { x: 4, y: 59 };
    expect(frontier([lower, a, twin], 'less', 'more')).toEqual([a, twin]);
  });

  it('is everything there is, of one point or of none', () => {
    expect(frontier([a], 'more', 'less')).toEqual([a]);
    expect(frontier([], 'more', 'more')).toEqual([]);
  });
});

/** The definition in words, point by point. */
function beats(one: Point, other: Point, x: Better, y: Better): boolean {
  const ahead = (better: Better, mine: number, others: number) =>
    better === 'more' ? mine - others : others - mine;
  const [inX, inY] = [ahead(x, one.x, other.x), ahead(y, one.y, other.y)];
  return inX >= 0 && inY >= 0 && (inX > 0 || inY > 0);
}

describe('the frontier of any points', () => {
  const value = fc.integer({ min: -6, max: 6 });
  const points = fc.array(fc.record({ x: value, y: value }), { maxLength: 40 });
  const better = fc.constantFrom<Better>('more', 'less');

  it('holds nobody who is beaten, and all others are beaten by somebody on it', () => {
    fc.assert(
      fc.property(points, better, better, (all, x, y) => {
        const best = frontier(all, x, y);
        for (const one of best) expect(all.some((other) => beats(other, one, x, y))).toBe(false);
        for (const one of all)
          if (!best.includes(one)) expect(best.some((other) => beats(other, one, x, y))).toBe(true);
      }),
      { seed: 20261, numRuns: 300 },
    );
  });
});
