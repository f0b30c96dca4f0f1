import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drawPlan, type PlanLabels } from '../../src/drawings/draw-plan.ts';
import { narrow, wide } from '../../src/drawings/paper.ts';
import type { Design } from '../../src/model/design.ts';
import { figure, figureSet, quantity } from '../pages/almanac-fixture.ts';
import { metres, motor, noFigures, plank, shapeOf, trapezoid } from './fixture.ts';
import { pathsOf, pointsOf, sizeOf } from './sheet-numbers.ts';

const names = { id: 'plan', title: 'Plan of Reed', description: 'A wing and a tail.' };
const labels: PlanLabels = {
  span: { metric: '2 m', imperial: '78.7 in' },
  rootChord: { metric: '400 mm', imperial: '15.7 in' },
  arm: { metric: '1 m', imperial: '39.4 in' },
  nose: null,
  propellers: [{ metric: '⌀ 300 mm', imperial: '⌀ 11.8 in' }],
  fromBehind: 'from behind',
  dihedrals: [{ metric: '5°', imperial: '5°' }],
};

function drawn(design: Design, paper = wide, figures = noFigures): string {
  return drawPlan(shapeOf(design, figures), paper, names, labels);
}

/** Wing and tail of a drawing, as the points of their outlines. */
function outlines(svg: string) {
  return pathsOf(svg, 'drawn-outline').map((data) => pointsOf(`<path d="${data}"/>`));
}

function extent(values: readonly number[]): number {
  return Math.max(...values) - Math.min(...values);
}

function expectInside(svg: string): void {
  const { width, height } = sizeOf(svg);
  expect(svg).not.toMatch(/NaN|Infinity|undefined/);
  for (const { x, y } of pointsOf(svg)) {
    expect(x).toBeGreaterThanOrEqual(0);
    expect(x).toBeLessThanOrEqual(width);
    expect(y).toBeGreaterThanOrEqual(0);
    expect(y).toBeLessThanOrEqual(height);
  }
}

/** Hooks, places and a raised outer panel, so that every part of a drawing is there. */
function whole(k = 1): Design {
  const panel = (length: number, root: number, tip: number, dihedral: number) => ({
    length: metres(length * k),
    root: metres(root * k),
    tip: metres(tip * k),
    sweep: metres(0),
    dihedral: quantity('angle', dihedral, 0),
  });
  const base = trapezoid(k);
  return {
    ...base,
    wing: { ...base.wing, panels: [panel(0.6, 0.3, 0.3, 0), panel(0.4, 0.3, 0.2, 0.25)] },
    fin: { area: quantity('area', 0.04 * k * k, 0), arm: metres(k), count: 2 },
    nose: metres(0.4 * k),
    motors: [
      motor({
        count: 2,
        at: [metres(0.4 * k)],
        hooks: metres(0.5 * k),
        propeller: { diameter: metres(0.3 * k), pitch: null, blades: 2, after: null },
      }),
    ],
  };
}

describe('drawPlan', () => {
  // By hand: the aircraft is 2 m wide and from the nose, 0.31111 m ahead, to the tail's end at 1.22778 m it is 1.53889 m
  // deep; of the sheet of 720 × 640 it may take 632 × 534. 632/2 = 316 is less than 534/1.53889 = 347.
  it('draws the trapezoid at the scale that its sheet allows', () => {
    const [tail = [], wing = []] = outlines(drawn(trapezoid()));
    expect(extent(wing.map(({ x }) => x))).toBeCloseTo(632, 0);
    expect(extent(wing.map(({ y }) => y))).toBeCloseTo(0.4 * 316, 0);
    expect(extent(tail.map(({ x }) => x))).toBeCloseTo(0.6 * 316, 0);
    expect(extent(tail.map(({ y }) => y))).toBeCloseTo(0.2 * 316, 0);
    // From the leading edge of the wing at the root to that of the tail: 1.02778 m.
    const front = (points: typeof wing) => Math.min(...points.map(({ y }) => y));
    expect(front(tail) - front(wing)).toBeCloseTo(1.0277778 * 316, 0);
  });

  it('is the same for an aircraft twice as large, but for the scale bar', () => {
    const withoutBar = (svg: string) => svg.replace(/<g class="(metric|imperial)">.*?<\/g>/g, '');
    expect(withoutBar(drawn(whole(2)))).toBe(withoutBar(drawn(whole())));
    expect(drawn(whole(2))).not.toBe(drawn(whole()));
  });

  it('has a left half that mirrors the right one', () => {
    for (const points of outlines(drawn(whole()))) {
      const seen = new Set(points.map(({ x, y }) => `${(x - 360).toFixed(1)} ${y}`));
      for (const { x, y } of points) expect(seen).toContain(`${(360 - x).toFixed(1)} ${y}`);
    }
  });

  it('draws both views to one scale, one above the other', () => {
    const svg = drawn(whole());
    const [edge = ''] = pathsOf(svg, 'drawn-edge');
    const behind = pointsOf(`<path d="${edge}"/>`).map(({ x }) => x);
    const above = (outlines(svg)[1] ?? []).map(({ x }) => x);
    expect([Math.min(...behind), Math.max(...behind)]).toEqual([Math.min(...above), Math.max(...above)]);
    // A disc of 0.3 m is as wide on edge as it is round: three quarters of the inner panel's 0.4 m to the motor.
    const [, radius] = /class="drawn-swept" cx="[^"]*" cy="[^"]*" r="([^"]*)"/.exec(svg) ?? [];
    const hubs = [...svg.matchAll(/class="drawn-swept" cx="([^"]*)"/g)].map(([, x]) => Number(x));
    expect(Number(radius) / (extent(hubs) / 2)).toBeCloseTo(0.15 / 0.4, 2);
  });

  it('has no view from behind where the wing is level and no disc is known', () => {
    expect(drawn(trapezoid())).not.toContain('drawn-edge');
    expect(drawn(trapezoid())).not.toContain('from behind');
    expect(drawn(whole())).toContain('from behind');
  });

  it('writes each length in both systems of units', () => {
    const svg = drawn(whole());
    for (const text of ['2 m', '400 mm', '1 m', '⌀ 300 mm'])
      expect(svg).toMatch(new RegExp(`<text class="drawn-text metric"[^>]*>${text}<`));
    for (const text of ['78.7 in', '15.7 in', '39.4 in', '⌀ 11.8 in'])
      expect(svg).toMatch(new RegExp(`<text class="drawn-text imperial"[^>]*>${text}<`));
  });

  it('dashes what is a guess and nothing that was measured', () => {
    const chord = figureSet([figure('mean-chord', 'm', 0.2, 0.002)]);
    expect(pathsOf(drawn(plank(), wide, chord), 'drawn-outline assumed')).toHaveLength(1);
    expect(drawn(whole())).not.toContain('assumed');
  });

  // By hand: seen from behind, clockwise goes over the top from left to right; from above, the upper blade goes right.
  it('turns propellers the way they were written', () => {
    const turned = (rotation: 'clockwise' | 'anticlockwise') =>
      pathsOf(
        drawn({ ...whole(), motors: whole().motors.map((one) => ({ ...one, rotation })) }),
        'drawn-turn',
      ).map((data) => {
        const [from, to] = pointsOf(`<path d="${data}"/>`);
        return Math.sign((to?.x ?? 0) - (from?.x ?? 0));
      });
    expect(turned('clockwise')).toEqual([1, 1, 1, 1]);
    expect(turned('anticlockwise')).toEqual([-1, -1, -1, -1]);
  });

  it('names itself for those who cannot see it, with what people wrote escaped', () => {
    const svg = drawPlan(
      shapeOf(trapezoid()),
      narrow,
      { ...names, title: 'Plan of <Reed> & "Rush"' },
      labels,
    );
    expect(svg).toContain('role="img" aria-labelledby="plan-narrow-title plan-narrow-description"');
    expect(svg).toContain(
      '<title id="plan-narrow-title">Plan of &lt;Reed&gt; &amp; &quot;Rush&quot;</title>',
    );
    expect(svg).toContain('<desc id="plan-narrow-description">A wing and a tail.</desc>');
  });

  it('keeps every aircraft on its sheet, however odd', () => {
    const length = fc.double({ min: 0.001, max: 5, noNaN: true });
    const panel = fc.record({
      length: length.map(metres),
      root: length.map(metres),
      tip: length.map(metres),
      sweep: fc.double({ min: -3, max: 3, noNaN: true }).map(metres),
      dihedral: fc.double({ min: -1.5, max: 1.5, noNaN: true }).map((angle) => quantity('angle', angle, 0)),
    });
    const motors = fc.record({
      count: fc.integer({ min: 1, max: 12 }),
      at: fc.array(length.map(metres), { minLength: 1, maxLength: 6 }),
      faces: fc.constantFrom('tractor' as const, 'pusher' as const, null),
      side: fc.constantFrom('left' as const, 'right' as const, null),
      hooks: fc.option(length.map(metres)),
      propeller: length.map((d) => ({ diameter: metres(d), pitch: null, blades: 2, after: null })),
    });
    const odd = fc.record({
      panels: fc.array(panel, { minLength: 1, maxLength: 5 }),
      layout: fc.constantFrom('tail-aft' as const, 'canard' as const, 'tandem' as const, 'tailless' as const),
      tailplane: fc.record({
        span: fc.option(length.map(metres)),
        area: fc.option(length.map((area) => quantity('area', area, 0))),
        arm: fc.option(length.map(metres)),
        incidence: fc.constant(null),
      }),
      nose: fc.option(length.map(metres)),
      motors: fc.array(motors.map(motor), { maxLength: 3 }),
    });
    fc.assert(
      fc.property(odd, ({ panels, ...own }) => {
        const design = trapezoid(1, own);
        for (const paper of [wide, narrow])
          expectInside(drawn({ ...design, wing: { ...design.wing, panels } }, paper));
      }),
      { seed: 20261125, numRuns: 150 },
    );
  });
});
