import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { ThrustPoint } from '../../src/model/bench-log.ts';
import {
  integrateRun,
  runTime,
  type ThrustRun,
  thrustImpulse,
  thrustRun,
} from '../../src/rubber/thrust-log.ts';

function log(...rows: readonly (readonly [time: number, thrust: number])[]): ThrustPoint[] {
  return rows.map(([time, thrust]) => ({ time, thrust }));
}

function read(points: readonly ThrustPoint[]): ThrustRun {
  const run = thrustRun(points);
  if (run === null) throw new Error('no thrust');
  return run;
}

// Up to 1 N in 10 s, down again in 10 s, then at rest to 40 s. By hand: 5 % of the peak is crossed at 0.5 and 19.5 s; of the
// area of 10 N·s two corners of ½ · 0.5 s · 0.05 N are cut off.
const triangle = log([0, 0], [10, 1], [20, 0], [37, 0], [40, 0]);

describe('a thrust log', () => {
  it('of an even pull for 14 s runs for 14 s, at its peak all the time', () => {
    const run = read(log([0, 0], [1, 0], [1, 0.6], [15, 0.6], [15, 0], [40, 0]));
    expect(runTime(run)).toBeCloseTo(14, 12);
    expect(run.peak).toBeCloseTo(0.6, 12);
  });

  it('runs between the interpolated crossings of 5 % of its peak', () => {
    const run = read(triangle);
    expect(run.peak).toBe(1);
    expect(runTime(run)).toBeCloseTo(19, 12);
    expect(thrustImpulse(run)).toBeCloseTo(10 - 2 * 0.0125, 12);
    expect(run.cutOff).toEqual({ start: false, end: false });
    // 40 s in four steps.
    expect(run.timeStep).toBe(10);
  });

  it('has what the rig reads at rest taken off', () => {
    const run = read(triangle.map(({ time, thrust }) => ({ time, thrust: thrust + 0.3 })));
    expect(run.drift).toBeCloseTo(0.3, 12);
    expect(run.peak).toBeCloseTo(1, 12);
    expect(thrustImpulse(run)).toBeCloseTo(9.975, 12);
  });

  it('takes the middle one of the last readings, of an even number the mean of the middle two', () => {
    const ending = (...rest: number[]) =>
      read(log([0, 0], [10, 1], [20, 0], [90, 0], ...rest.map((thrust) => [100, thrust] as const))).drift;
    expect(ending(0.001, 0.015, 0.002)).toBe(0.002);
    expect(ending(0.001, 0.002, 0.004, 0.015)).toBeCloseTo(0.003, 12);
  });

  it('keeps its zero where the last readings lie more than 2 % of the peak apart', () => {
    const even = read(log([0, 0], [10, 1], [20, 0], [38, 0], [39, 0.019], [40, 0]));
    expect(even.noDrift).toBeNull();
    const uneven = read(log([0, 0], [10, 1], [20, 0], [38, 0.2], [39, 0.221], [40, 0.2]));
    expect(uneven).toMatchObject({ drift: 0, noDrift: 'uneven end', peak: 1 });
  });

  it('keeps its zero where nothing would be left', () => {
    const run = read(log([0, 0.6], [14, 0.6]));
    expect(run).toMatchObject({ drift: 0, noDrift: 'nothing would be left' });
    expect(runTime(run)).toBe(14);
    expect(thrustImpulse(run)).toBeCloseTo(8.4, 12);
  });

  it('counts a dip below zero within the run as it is', () => {
    // By hand: 2 s at 1 N, 1 s down to −1 N and back, 2 s at 1 N: areas of 2, 0 and 2 N·s.
    const run = read(log([0, 0], [0, 1], [2, 1], [2.5, -1], [3, 1], [5, 1], [5, 0], [50, 0]));
    expect(runTime(run)).toBeCloseTo(5, 12);
    expect(thrustImpulse(run)).toBeCloseTo(4, 12);
    // Squares, by hand: four times 1 s or half a second at 1, five seconds in all.
    expect(integrateRun(run, (one) => one ** 2)).toBeCloseTo(5, 12);
  });

  it('says where it begins or ends with the motor running', () => {
    const run = read(log([0, 1], [10, 0.8], [20, 0.6], [29.5, 0.45], [30, 0.4]));
    expect(run.cutOff).toEqual({ start: true, end: true });
    expect(runTime(run)).toBe(30);
  });

  it('is nothing without thrust or without time', () => {
    expect(thrustRun(log([0, 0], [10, 0]))).toBeNull();
    expect(thrustRun(log([0, -1], [10, -1]))).toBeNull();
    expect(thrustRun(log([3, 1], [3, 2]))).toBeNull();
    expect(thrustRun([])).toBeNull();
  });

  it('does not care where its zero and its clock stand, and goes with its scale (law)', () => {
    const thrusts = fc.array(fc.integer({ min: 0, max: 1000 }), { minLength: 5, maxLength: 40 });
    fc.assert(
      fc.property(
        thrusts,
        fc.integer({ min: -500, max: 500 }),
        fc.integer({ min: 1, max: 9 }),
        (values, zero, scale) => {
          fc.pre(Math.max(...values) > 0);
          const points = [...values, 0, ...Array.from({ length: 40 }, () => 0)].map((thrust, index) => ({
            time: index,
            thrust,
          }));
          const plain = read(points);
          const moved = read(
            points.map(({ time, thrust }) => ({ time: time + 7, thrust: scale * thrust + zero })),
          );
          expect(moved.drift).toBeCloseTo(zero, 6);
          expect(runTime(moved)).toBeCloseTo(runTime(plain), 6);
          expect(thrustImpulse(moved)).toBeCloseTo(scale * thrustImpulse(plain), 6);
        },
      ),
      { seed: 5, numRuns: 200 },
    );
  });
});
