import { type PlanShape, planShape } from '../../src/drawings/plan-shape.ts';
import type { FigureSet } from '../../src/figures/figure.ts';
import type { Design, Motor } from '../../src/model/design.ts';
import { design as base, figureSet, quantity } from '../pages/almanac-fixture.ts';

// Invented aircraft for the drawings, small enough to be worked out by hand.

export const metres = (value: number) => quantity('length', value, 0);
export const noFigures: FigureSet = figureSet([]);

/** A motor of the fixture's kind with what the test is about. */
export function motor(own: Partial<Motor>): Motor {
  const [first] = base.motors;
  if (first === undefined) throw new Error('The invented aircraft has a motor.');
  return { ...first, ...own };
}

/**
 * The published trapezoid of the mean chord, times k: root 0.4 m, tip 0.2 m at 1 m, straight leading edge; its mean chord
 * is 0.31111 m at 0.44444 m. With a tail of 0.6 m × 0.2 m on an arm of 1 m.
 */
export function trapezoid(k = 1, own: Partial<Design> = {}): Design {
  const panel = {
    length: metres(k),
    root: metres(0.4 * k),
    tip: metres(0.2 * k),
    sweep: metres(0),
    dihedral: null,
  };
  return {
    ...base,
    wing: { ...base.wing, span: metres(2 * k), panels: [panel] },
    tailplane: {
      span: metres(0.6 * k),
      area: quantity('area', 0.12 * k * k, 0),
      arm: metres(k),
      incidence: null,
    },
    balance: null,
    motors: [],
    ...own,
  };
}

/** A wing of span and area alone. */
export function plank(own: Partial<Design> = {}): Design {
  return { ...base, motors: [], balance: null, ...own };
}

export function shapeOf(design: Design, figures: FigureSet = noFigures): PlanShape {
  const shape = planShape(design, figures);
  if (shape === null) throw new Error('This aircraft has a shape.');
  return shape;
}
