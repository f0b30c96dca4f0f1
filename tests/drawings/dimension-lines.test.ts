import { describe, expect, it } from 'vitest';
import type { Annotation } from '../../src/drawings/annotation.ts';
import {
  armDimension,
  noseDimension,
  rootChordDimension,
  spanDimension,
} from '../../src/drawings/dimension-lines.ts';
import { wide } from '../../src/drawings/paper.ts';
import { layOutSheet } from '../../src/drawings/sheet.ts';
import type { Design } from '../../src/model/design.ts';
import { metres, shapeOf, trapezoid } from './fixture.ts';
import { pointsOf } from './sheet-numbers.ts';

const label = { metric: '1 m', imperial: '3 ft' };

/** Both ends of the line of the first placing, in metres from the leading edge at the centre line. */
function ends(design: Design, draw: typeof armDimension): { x: number; y: number }[] {
  const shape = shapeOf(design);
  const sheet = layOutSheet([{ shape, forwards: 0 }], wide, false);
  const { placings }: Annotation = draw(shape, sheet, label);
  const zero = sheet.above({ x: 0, y: 0 });
  return pointsOf(`<path d="${placings[0]?.lines ?? ''}"/>`)
    .slice(0, 2)
    .map(({ x, y }) => ({ x: (y - zero.y) / sheet.scale, y: (x - zero.x) / sheet.scale }));
}

describe('dimension lines', () => {
  it('measure the span from tip to tip', () => {
    const [left, right] = ends(trapezoid(), spanDimension);
    expect(left?.y).toBeCloseTo(-1, 3);
    expect(right?.y).toBeCloseTo(1, 3);
  });

  it('put the span behind the wing of a canard, clear of the foreplane', () => {
    expect(ends(trapezoid(), spanDimension)[0]?.x).toBeLessThan(0);
    expect(ends(trapezoid(1, { layout: 'canard' }), spanDimension)[0]?.x).toBeGreaterThan(0.4);
  });

  // By hand: the quarter of the mean chord of 0.31111 m lies at 0.07778 m, that of the tail the arm of 1 m behind it.
  it('measure the arm from quarter-chord to quarter-chord', () => {
    const [wing, tail] = ends(trapezoid(), armDimension);
    expect(wing?.x).toBeCloseTo(0.07778, 3);
    expect(tail?.x).toBeCloseTo(1.07778, 3);
  });

  it('measure the chord at the centre line', () => {
    const [leading, trailing] = ends(trapezoid(), rootChordDimension);
    expect(leading?.x).toBeCloseTo(0, 3);
    expect(trailing?.x).toBeCloseTo(0.4, 3);
  });

  it('measure the nose from the leading edge', () => {
    const [front, leading] = ends(trapezoid(1, { nose: metres(0.5) }), noseDimension);
    expect(front?.x).toBeCloseTo(-0.5, 3);
    expect(leading?.x).toBeCloseTo(0, 3);
  });

  it('have no line where the paper would hold only its ticks', () => {
    expect(ends(trapezoid(1, { nose: metres(0.001) }), noseDimension)).toEqual([]);
    expect(ends(trapezoid(1, { layout: 'tailless' }), armDimension)).toEqual([]);
  });
});
