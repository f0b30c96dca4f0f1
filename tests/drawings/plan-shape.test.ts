import { describe, expect, it } from 'vitest';
import { planShape } from '../../src/drawings/plan-shape.ts';
import { planSheet } from '../../src/drawings/plan-sheet.ts';
import type { Design } from '../../src/model/design.ts';
import { design as base, quantity } from '../pages/almanac-fixture.ts';

const metres = (value: number) => quantity('length', value, 0);

/** The textbook trapezoid: root 400 mm, tip 200 mm at 1000 mm; its mean chord of 311.11 mm is hand arithmetic, 28/90 m. */
function trapezoid(k = 1): Design {
  const panel = {
    length: metres(k),
    root: metres(0.4 * k),
    tip: metres(0.2 * k),
    sweep: null,
    dihedral: null,
  };
  const tailplane = {
    span: metres(0.6 * k),
    area: quantity('area', 0.12 * k * k, 0),
    arm: metres(k),
    incidence: null,
  };
  return {
    ...base,
    wing: { ...base.wing, span: metres(2 * k), panels: [panel] },
    tailplane,
    balance: null,
    motors: [],
  };
}

describe('planShape', () => {
  it('draws the wing from its panels, mirrored', () => {
    expect(planShape(trapezoid(), null)?.wing).toEqual([
      { x: 0, y: 0 },
      { x: 0, y: 1 },
      { x: 0.2, y: 1 },
      { x: 0.4, y: 0 },
      { x: 0.4, y: -0 },
      { x: 0.2, y: -1 },
      { x: 0, y: -1 },
      { x: 0, y: -0 },
    ]);
  });

  // By hand: quarter chord of the wing at 0.3111/4 = 0.07778, tail chord 0.12/0.6 = 0.2, so it begins at 1.07778 − 0.05.
  it('puts the tail quarter-chord its arm behind the wing’s', () => {
    expect(planShape(trapezoid(), null)?.tail?.outline[0]?.x).toBeCloseTo(1.027778, 6);
  });

  it('puts the tail of a canard as far ahead', () => {
    const shape = planShape({ ...trapezoid(), layout: 'canard' }, null);
    expect(shape?.tail?.outline[0]?.x).toBeCloseTo(0.077778 - 1 - 0.05, 5);
  });

  it('says that a wing of span and chord alone is taken as straight', () => {
    const shape = planShape({ ...base, motors: [] }, 0.2);
    expect(shape?.assumptions).toEqual(['straight-wing']);
  });

  it('leaves out several motors whose places nobody gave, and says so', () => {
    const shape = planShape({ ...base, motors: base.motors.map((motor) => ({ ...motor, at: null })) }, 0.2);
    expect(shape?.motors).toEqual([]);
    expect(shape?.assumptions).toContain('motors-left-out');
  });

  it('draws nothing of a wing without depth', () => {
    expect(planShape(base, null)).toBeNull();
    expect(planShape(trapezoid(0), null)).toBeNull();
  });
});

describe('planSheet', () => {
  // By hand: 2 m of span on 600 − 2 × 20.
  it('has one scale, and room for everything', () => {
    const shape = planShape(trapezoid(), null);
    if (shape === null) throw new Error('The trapezoid has a shape.');
    const sheet = planSheet(shape, 600, 600, 20);
    expect(sheet.scale).toBeCloseTo(280, 9);
    for (const point of [...shape.wing, ...(shape.tail?.outline ?? [])].map(sheet.place)) {
      expect(point.x).toBeGreaterThanOrEqual(20);
      expect(point.x).toBeLessThanOrEqual(580);
      expect(point.y).toBeGreaterThanOrEqual(20);
      expect(point.y).toBeLessThanOrEqual(sheet.height - 20);
    }
  });

  it('is the same sheet at half the scale for an aircraft twice as large', () => {
    const [small, large] = [planShape(trapezoid(1), null), planShape(trapezoid(2), null)];
    if (small === null || large === null) throw new Error('Both have a shape.');
    const [one, two] = [planSheet(small, 600, 600, 20), planSheet(large, 600, 600, 20)];
    expect(two.scale).toBeCloseTo(one.scale / 2, 9);
    expect(two.height).toBe(one.height);
    expect(large.wing.map(two.place)).toEqual(small.wing.map(one.place));
  });
});
