import { describe, expect, it } from 'vitest';
import { type Annotation, placeAnnotations } from '../../src/drawings/annotation.ts';
import { overlap } from '../../src/drawings/box.ts';
import { labelBox } from '../../src/drawings/label.ts';
import { wide } from '../../src/drawings/paper.ts';
import type { Sheet } from '../../src/drawings/sheet.ts';

const sheet: Sheet = {
  paper: wide,
  width: 200,
  height: 100,
  scale: 1,
  floor: 100,
  above: (point) => point,
  behind: null,
};

/** A label of ten letters that may stand at each of these heights. */
function written(text: string, ...heights: readonly number[]): Annotation {
  return {
    label: { metric: text, imperial: text },
    placings: heights.map((y) => ({
      place: { x: 100, y, anchor: 'middle' as const },
      lines: '',
      room: null,
    })),
  };
}

describe('placeAnnotations', () => {
  it('takes the first place that is free', () => {
    const svg = placeAnnotations(
      [written('one', 50), written('two', 52, 80)],
      { solids: [], outlines: [] },
      sheet,
    );
    expect(svg).toMatch(/y="50"[^>]*>one<.*y="80"[^>]*>two</);
  });

  it('leaves out what has no free place, on the sheet or beside what is drawn', () => {
    const taken = { solids: [{ left: 0, top: 40, right: 200, bottom: 60 }], outlines: [] };
    expect(placeAnnotations([written('one', 50, 300)], taken, sheet)).toBe('');
  });

  it('lets the line of a dimension cross an outline, its words not', () => {
    const line = { left: 99, top: 10, right: 101, bottom: 90 };
    const annotation = (x: number): Annotation => ({
      label: { metric: 'arm', imperial: 'arm' },
      placings: [{ place: { x, y: 80, anchor: 'start' }, lines: 'M100 10L100 90', room: line }],
    });
    const taken = { solids: [], outlines: [{ left: 80, top: 30, right: 120, bottom: 32 }] };
    expect(placeAnnotations([annotation(106)], taken, sheet)).toContain('M100 10L100 90');
    const under = { solids: [], outlines: [{ left: 80, top: 76, right: 120, bottom: 78 }] };
    expect(placeAnnotations([annotation(106)], under, sheet)).toBe('');
  });
});

describe('labelBox', () => {
  it('lies where the label is anchored', () => {
    const label = { metric: '1234567890', imperial: '1' };
    const level = (anchor: 'start' | 'middle' | 'end') => labelBox(label, { x: 100, y: 50, anchor }, 10);
    expect(level('start').left).toBe(100);
    expect(level('end').right).toBe(100);
    expect((level('middle').left + level('middle').right) / 2).toBe(100);
    const upright = labelBox(label, { x: 100, y: 50, anchor: 'middle', upright: true }, 10);
    expect(upright.bottom - upright.top).toBeCloseTo(level('start').right - 100, 9);
  });
});

describe('overlap', () => {
  it('holds for boxes that share room, not for those that touch', () => {
    const box = { left: 0, top: 0, right: 10, bottom: 10 };
    expect(overlap(box, { left: 9, top: 9, right: 20, bottom: 20 })).toBe(true);
    expect(overlap(box, { left: 10, top: 0, right: 20, bottom: 10 })).toBe(false);
  });
});
