import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { TorquePoint } from '../../src/model/batch.ts';
import { energyFrom, type TorqueCurve, torqueAt, torqueCurve } from '../../src/rubber/torque-log.ts';

function read(...rows: readonly (readonly [turns: number, torque: number])[]): TorqueCurve {
  const curve = torqueCurve(rows.map(([turns, torque]) => ({ turns, torque })));
  if (curve === null) throw new Error('no curve');
  return curve;
}

describe('a torque log', () => {
  // A torque that falls evenly from 0.1 N·m at 1000 turns to nothing: the area is a triangle.
  const even = read([1000, 0.1], [0, 0]);

  it('gives the work of its torque, 2π∫Q dn', () => {
    // By hand: 2π · ½ · 1000 · 0.1 N·m = 314.159265 J; from half the turns a quarter of it.
    expect(energyFrom(even, 1000)).toBeCloseTo(314.159265, 6);
    expect(energyFrom(even, 500)).toBeCloseTo(78.539816, 6);
    expect(energyFrom(even, 0)).toBe(0);
  });

  it('is read between its rows along a straight line', () => {
    const curve = read([540, 0.051], [480, 0.042], [420, 0.034], [0, 0]);
    expect(torqueAt(curve, 510)).toBeCloseTo(0.0465, 12);
    expect(torqueAt(curve, 480)).toBeCloseTo(0.042, 12);
    expect(torqueAt(curve, 42)).toBeCloseTo(0.0034, 12);
    // By hand: trapezoids of 60 · 0.0465, 60 · 0.038 and 420 · 0.017 turns·N·m, times 2π.
    expect(energyFrom(curve, 540)).toBeCloseTo(2 * Math.PI * (2.79 + 2.28 + 7.14), 9);
  });

  it('stays at its top beyond it', () => {
    expect(even.top).toBe(1000);
    expect(torqueAt(even, 1200)).toBe(0.1);
    expect(energyFrom(even, 1200)).toBe(energyFrom(even, 1000));
  });

  it('counts only down to where it ends', () => {
    const curve = read([600, 0.04], [100, 0.02]);
    expect(curve.end).toBe(100);
    expect(energyFrom(curve, 600)).toBeCloseTo(2 * Math.PI * 500 * 0.03, 9);
    expect(energyFrom(curve, 50)).toBe(0);
    expect(torqueAt(curve, 50)).toBe(0.02);
  });

  it('bears two readings at the same turns', () => {
    const curve = read([100, 0.03], [50, 0.02], [50, 0.01], [0, 0]);
    expect(energyFrom(curve, 100)).toBeCloseTo(2 * Math.PI * (50 * 0.025 + 50 * 0.005), 12);
    expect(torqueAt(curve, 75)).toBeCloseTo(0.025, 12);
    expect(torqueAt(curve, 25)).toBeCloseTo(0.005, 12);
  });

  it('is nothing without two different numbers of turns', () => {
    expect(torqueCurve([])).toBeNull();
    expect(torqueCurve([{ turns: 5, torque: 1 }])).toBeNull();
    expect(
      torqueCurve([
        { turns: 5, torque: 1 },
        { turns: 5, torque: 0 },
      ]),
    ).toBeNull();
  });

  it('gives from one number of turns what it gives to another and from there (law)', () => {
    const rows = fc.uniqueArray(fc.integer({ min: 0, max: 1000 }), { minLength: 2, maxLength: 40 });
    fc.assert(
      fc.property(rows, fc.double({ min: 0, max: 1, noNaN: true }), (all, share) => {
        const unwinding: TorquePoint[] = all
          .toSorted((a, b) => b - a)
          .map((turns) => ({ turns, torque: turns ** 1.3 / 1e5 }));
        const curve = torqueCurve(unwinding)!;
        const turns = curve.end + share * (curve.top - curve.end);
        const above = unwinding.filter((point) => point.turns > turns);
        const rest = torqueCurve([...above, { turns, torque: torqueAt(curve, turns) }]);
        const whole = energyFrom(curve, curve.top);
        const partly = energyFrom(curve, turns) + (rest === null ? 0 : energyFrom(rest, curve.top));
        expect(partly).toBeCloseTo(whole, 9);
      }),
      { seed: 6, numRuns: 300 },
    );
  });
});
