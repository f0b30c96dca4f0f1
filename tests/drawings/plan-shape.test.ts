import { describe, expect, it } from 'vitest';
import { planShape } from '../../src/drawings/plan-shape.ts';
import { tailOutline } from '../../src/drawings/tail-shape.ts';
import { sectionAt, wingJoints, wingOutline } from '../../src/drawings/wing-shape.ts';
import { figure, figureSet, quantity } from '../pages/almanac-fixture.ts';
import { metres, motor, noFigures, plank, shapeOf, trapezoid } from './fixture.ts';

const chordOf = (value: number) => figureSet([figure('mean-chord', 'm', value, 0.002)]);

describe('the wing of a plan', () => {
  it('is drawn from its panels, mirrored', () => {
    expect(wingOutline(shapeOf(trapezoid()).wing)).toEqual([
      { x: 0, y: 0 },
      { x: 0, y: 1 },
      { x: 0.2, y: 1 },
      { x: 0.4, y: 0 },
      { x: 0.4, y: 0 },
      { x: 0.2, y: -1 },
      { x: 0, y: -1 },
      { x: 0, y: 0 },
    ]);
  });

  // Published example of the mean chord: 311.1111 at 444.4444 for root 400, tip 200 at 1000.
  it('has the mean chord of the published example', () => {
    const { mean } = shapeOf(trapezoid()).wing;
    expect(mean.chord).toBeCloseTo(0.3111111, 6);
    expect(mean.station).toBeCloseTo(0.4444444, 6);
  });

  // By hand: a panel of 1 m raised by 60° spans 1 × cos 60° = 0.5 m and rises 1 × sin 60° = 0.8660 m.
  it('is shortened by its dihedral and raised by it', () => {
    const [panel] = trapezoid().wing.panels ?? [];
    if (panel === undefined) throw new Error('The trapezoid has a panel.');
    const raised = { ...panel, dihedral: quantity('angle', Math.PI / 3, 0) };
    const base = trapezoid();
    const tip = shapeOf({ ...base, wing: { ...base.wing, panels: [raised] } }).wing.sections[1];
    expect(tip?.y).toBeCloseTo(0.5, 12);
    expect(tip?.z).toBeCloseTo(0.8660254, 6);
  });

  // By hand: halfway out the trapezoid's chord is (0.4 + 0.2)/2.
  it('tells the chord between its sections, on either side', () => {
    const { wing } = shapeOf(trapezoid());
    expect(sectionAt(wing, 0.5).trailing).toBeCloseTo(0.3, 12);
    expect(sectionAt(wing, -0.5).trailing).toBeCloseTo(0.3, 12);
  });

  it('has a joint for each meeting of panels, as long as the wider one', () => {
    const panel = (root: number, tip: number, sweep: number) => ({
      length: metres(0.5),
      root: metres(root),
      tip: metres(tip),
      sweep: metres(sweep),
      dihedral: null,
    });
    const base = trapezoid();
    const { wing } = shapeOf({
      ...base,
      wing: { ...base.wing, span: metres(2), panels: [panel(0.2, 0.2, 0.05), panel(0.3, 0.1, 0.05)] },
    });
    expect(wingJoints(wing)).toEqual([
      [
        { x: 0.05, y: 0.5 },
        { x: 0.35, y: 0.5 },
      ],
    ]);
  });

  it('is a rectangle where only span and area are known, and says so', () => {
    const shape = shapeOf(plank(), chordOf(0.2));
    expect(wingOutline(shape.wing).slice(0, 4)).toEqual([
      { x: 0, y: 0 },
      { x: 0, y: 1 },
      { x: 0.2, y: 1 },
      { x: 0.2, y: 0 },
    ]);
    expect(shape.wing.assumed).toBe(true);
    expect(shape.notes).toEqual(['straight-wing', 'level-wing', 'tail-left-out']);
  });

  it('says when panels and span disagree', () => {
    const base = trapezoid();
    expect(shapeOf({ ...base, wing: { ...base.wing, span: metres(2.1) } }).notes).toContain(
      'panels-miss-span',
    );
    expect(shapeOf({ ...base, wing: { ...base.wing, span: metres(2.03) } }).notes).not.toContain(
      'panels-miss-span',
    );
  });

  it('without depth gives no plan', () => {
    expect(planShape(plank(), noFigures)).toBeNull();
    expect(planShape(plank(), chordOf(Number.NaN))).toBeNull();
    expect(planShape(trapezoid(0), noFigures)).toBeNull();
  });
});

describe('the tail of a plan', () => {
  // By hand: quarter chord of the wing at 0.31111/4 = 0.07778, tail chord 0.12/0.6 = 0.2, so it begins at 1.07778 − 0.05.
  it('stands its arm behind the wing, from quarter-chord to quarter-chord', () => {
    const { tail } = shapeOf(trapezoid());
    expect(tail?.leading).toBeCloseTo(1.0277778, 6);
    expect(tail?.chord).toBeCloseTo(0.2, 12);
    expect(tail?.kind).toBe('tailplane');
    expect(tail === null ? [] : tailOutline(tail).map(({ y }) => y)).toEqual([0.3, 0.3, -0.3, -0.3]);
  });

  it('of a canard stands as far ahead', () => {
    const { tail, stick } = shapeOf(trapezoid(1, { layout: 'canard' }));
    expect(tail?.leading).toBeCloseTo(0.0777778 - 1 - 0.05, 6);
    expect(tail?.kind).toBe('foreplane');
    expect(stick?.front).toBe(tail?.leading);
  });

  it('of tandem wings is a second wing, behind', () => {
    const { tail } = shapeOf(trapezoid(1, { layout: 'tandem' }));
    expect(tail?.kind).toBe('second-wing');
    expect(tail?.leading).toBeCloseTo(1.0277778, 6);
  });

  it('is not drawn on a tailless model, and nothing is missed', () => {
    const shape = shapeOf(trapezoid(1, { layout: 'tailless' }));
    expect(shape.tail).toBeNull();
    expect(shape.notes).not.toContain('tail-left-out');
  });

  // By hand: 0.16 m² at four chords of span is √0.64 = 0.8 m × 0.2 m.
  it('of which only the area is known is four times as wide as deep, and a guess', () => {
    const tailplane = { span: null, area: quantity('area', 0.16, 0), arm: metres(1), incidence: null };
    const { tail, notes } = shapeOf(trapezoid(1, { tailplane }));
    expect(tail?.span).toBeCloseTo(0.8, 12);
    expect(tail?.chord).toBeCloseTo(0.2, 12);
    expect(tail?.assumed).toBe(true);
    expect(notes).toContain('tail-proportions');
  });

  // By hand: 0.45 × 2 m behind 0.07778, less a quarter of 0.2.
  it('without an arm is drawn at the usual one, as a guess', () => {
    const tailplane = { span: metres(0.6), area: quantity('area', 0.12, 0), arm: null, incidence: null };
    const { tail, notes } = shapeOf(trapezoid(1, { tailplane }));
    expect(tail?.leading).toBeCloseTo(0.9277778, 6);
    expect(tail?.assumed).toBe(true);
    expect(notes).toContain('tail-arm');
  });
});

describe('the fins of a plan', () => {
  // By hand: 0.06 m² at a height of 1.5 chords is 0.2 m long; its quarter chord lies 1 m behind 0.07778.
  it('stand on edge at their arm', () => {
    const { fins } = shapeOf(
      trapezoid(1, { fin: { area: quantity('area', 0.06, 0), arm: metres(1), count: 1 } }),
    );
    expect(fins).toHaveLength(1);
    expect(fins[0]?.y).toBe(0);
    expect(fins[0]?.chord).toBeCloseTo(0.2, 12);
    expect(fins[0]?.leading).toBeCloseTo(1.0277778, 6);
  });

  it('stand at the ends of the surface they are nearest to when there are two', () => {
    const fin = { area: quantity('area', 0.06, 0), count: 2 };
    expect(shapeOf(trapezoid(1, { fin: { ...fin, arm: metres(1.1) } })).fins.map(({ y }) => y)).toEqual([
      -0.3, 0.3,
    ]);
    expect(shapeOf(trapezoid(1, { fin: { ...fin, arm: metres(0.1) } })).fins.map(({ y }) => y)).toEqual([
      -1, 1,
    ]);
  });

  it('without an area are left out, and that is said', () => {
    const shape = shapeOf(trapezoid(1, { fin: { area: null, arm: metres(1), count: 1 } }));
    expect(shape.fins).toEqual([]);
    expect(shape.notes).toContain('fin-left-out');
  });
});

describe('the motors of a plan', () => {
  const ys = (own: Parameters<typeof motor>[0]) =>
    shapeOf(trapezoid(1, { motors: [motor(own)] })).motors.map(({ y }) => y);

  it('stand on both sides of the centre line unless their side is written', () => {
    expect(ys({ count: 2, at: [metres(0.3)] })).toEqual([-0.3, 0.3]);
    expect(ys({ count: 1, at: [metres(0.3)], side: 'left' })).toEqual([-0.3]);
    expect(ys({ count: 1, at: [metres(0.3)], side: 'right' })).toEqual([0.3]);
    expect(ys({ count: 3, at: [metres(0), metres(0.3)] })).toEqual([0, -0.3, 0.3]);
  });

  // By hand: at 0.5 m the chord is 0.3 m, a fifth of it 0.06 m; hooks 0.25 m apart.
  it('pull from ahead of the leading edge, with the skein behind the propeller', () => {
    const [one] = shapeOf(
      trapezoid(1, {
        motors: [motor({ count: 2, at: [metres(0.5)], faces: 'tractor', hooks: metres(0.25) })],
      }),
    ).motors;
    expect(one?.propeller).toBeCloseTo(-0.06, 12);
    expect(one?.hook).toBeCloseTo(0.19, 12);
  });

  it('push from behind the trailing edge, with the skein ahead of the propeller', () => {
    const [one] = shapeOf(
      trapezoid(1, {
        motors: [motor({ count: 2, at: [metres(0.5)], faces: 'pusher', hooks: metres(0.25) })],
      }),
    ).motors;
    expect(one?.propeller).toBeCloseTo(0.36, 12);
    expect(one?.hook).toBeCloseTo(0.11, 12);
  });

  it('on the centre line pull at the nose', () => {
    const { motors, notes } = shapeOf(
      trapezoid(1, { nose: metres(0.5), motors: [motor({ count: 1, at: [metres(0)], faces: 'tractor' })] }),
    );
    expect(motors[0]?.propeller).toBe(-0.5);
    expect(notes).toContain('propeller-at-the-nose');
  });

  // By hand: where nobody wrote the nose it is one mean chord of 0.2 m ahead.
  it('on the centre line have a stick to stand on, however little is known', () => {
    const { motors, stick, notes } = shapeOf(
      plank({ motors: [motor({ count: 1, at: null })] }),
      chordOf(0.2),
    );
    expect(stick?.front).toBeCloseTo(-0.2, 12);
    expect(motors[0]?.propeller).toBe(stick?.front);
    expect(notes).toContain('nose');
  });

  it('that are single and without a place are on the centre line, as a guess', () => {
    const { motors, notes } = shapeOf(trapezoid(1, { motors: [motor({ count: 1, at: null })] }));
    expect(motors.map(({ y, assumed }) => ({ y, assumed }))).toEqual([{ y: 0, assumed: true }]);
    expect(notes).toContain('motor-on-centre-line');
  });

  it('that are several and without places are left out, and that is said', () => {
    const { motors, notes } = shapeOf(trapezoid(1, { motors: [motor({ count: 2, at: null })] }));
    expect(motors).toEqual([]);
    expect(notes).toContain('motors-left-out');
  });

  it('of more places than motors are left out, too', () => {
    expect(ys({ count: 1, at: [metres(0.3)] })).toEqual([]);
  });

  it('that share a place are drawn once, and that is said', () => {
    const { motors, notes } = shapeOf(trapezoid(1, { motors: [motor({ count: 4, at: [metres(0.3)] })] }));
    expect(motors).toHaveLength(2);
    expect(notes).toContain('motors-share-places');
  });
});

describe('the marks of a plan', () => {
  // By hand: without sweep the mean chord begins at the leading edge; 40 % of 0.31111 is 0.12444.
  it('lie on the mean chord', () => {
    const figures = figureSet([
      figure('balance-point', '1', 0.4, 0.01),
      figure('neutral-point', '1', 0.6, 0.01),
    ]);
    const shape = shapeOf(trapezoid(), figures);
    expect(shape.balance).toBeCloseTo(0.1244444, 6);
    expect(shape.neutralPoint).toBeCloseTo(0.1866667, 6);
  });

  it('are left out where the figures are', () => {
    const shape = shapeOf(trapezoid());
    expect([shape.balance, shape.neutralPoint]).toEqual([null, null]);
  });
});
