import { describe, expect, it } from 'vitest';
import { drawThumbnail } from '../../src/drawings/draw-thumbnail.ts';
import { metres, motor, noFigures, plank, trapezoid } from './fixture.ts';
import { pointsOf, sizeOf } from './sheet-numbers.ts';

describe('drawThumbnail', () => {
  // By hand: the wing reaches from 0 to the tail's end at 1.22778 m, the nose 0.31111 m ahead: 1.53889 m deep on 54, less
  // than 2 m on 114 would need; so 35.09 for each metre, and the tips lie 35 from the middle at 60.
  it('fits the aircraft into its box', () => {
    const svg = drawThumbnail(trapezoid(), noFigures);
    expect(sizeOf(svg)).toEqual({ width: 120, height: 60 });
    const xs = pointsOf(svg).map(({ x }) => x);
    const ys = pointsOf(svg).map(({ y }) => y);
    expect([Math.min(...xs), Math.max(...xs)]).toEqual([25, 95]);
    expect([Math.min(...ys), Math.max(...ys)]).toEqual([3, 57]);
  });

  it('is the same for an aircraft twice as large', () => {
    expect(drawThumbnail(trapezoid(2), noFigures)).toBe(drawThumbnail(trapezoid(), noFigures));
  });

  it('is one path without words, hidden from screen readers', () => {
    const svg = drawThumbnail(trapezoid(), noFigures);
    expect(svg.match(/<path/g)).toHaveLength(1);
    expect(svg).not.toContain('<t');
    expect(svg).toContain('aria-hidden="true"');
  });

  it('stays within 600 bytes with twelve motors and with forty panels', () => {
    const at = [1, 2, 3, 4, 5, 6].map((place) => metres(place / 10));
    const twelve = drawThumbnail(trapezoid(1, { motors: [motor({ count: 12, at })] }), noFigures);
    expect(twelve.length).toBeLessThanOrEqual(600);
    expect(twelve.match(/M/g)?.length).toBe(15);
    const base = trapezoid();
    const [panel] = base.wing.panels ?? [];
    const panels = panel === undefined ? [] : Array.from({ length: 40 }, () => panel);
    const forty = drawThumbnail({ ...base, wing: { ...base.wing, panels } }, noFigures);
    expect(forty.length).toBeLessThanOrEqual(600);
    expect(forty).toContain('<path d="M');
  });

  it('is empty where the wing has no depth', () => {
    expect(drawThumbnail(plank(), noFigures)).toBe('');
  });
});
