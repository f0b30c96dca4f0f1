import { describe, expect, it } from 'vitest';
import { drawLineChart } from '../../src/charts/draw-line-chart.ts';
import { layOutLineChart } from '../../src/charts/line-chart.ts';
import { torqueChart, torqueLine, torqueReach, torqueReadings } from '../../src/charts/torque-chart.ts';
import type { TorquePoint, TorqueTest } from '../../src/model/batch.ts';
import { measured } from '../figures/example-design.ts';

function test(points: readonly TorquePoint[] | null): TorqueTest {
  const length = measured('length', 0.3, 0.003);
  const mass = measured('mass', 0.0059, 0.0001);
  return { file: 'a.csv', strands: 6, length, mass, cycle: 1, points, calibration: 0.03 };
}

function drawn(points: readonly TorquePoint[]): string {
  const line = torqueLine(test(points))!;
  const chart = torqueChart(line, torqueReach([line]), { turns: 'Turns', torque: 'Torque' });
  return drawLineChart(layOutLineChart(chart), { id: 't', title: 'T', description: 'D' });
}

describe('the curve of a torque test', () => {
  const line = torqueLine(
    test([
      { turns: 250, torque: 0.03 },
      { turns: 50, torque: 0.01 },
      { turns: 0, torque: 0 },
    ]),
  )!;

  it('is in turns and N·mm', () => {
    expect(line).toEqual([
      { x: 250, y: 30 },
      { x: 50, y: 10 },
      { x: 0, y: 0 },
    ]);
    expect(torqueReach([line, []])).toEqual({ x: 250, y: 30 });
  });

  it('is read at round turns and at the top', () => {
    // By hand: 20 N·mm over 200 turns, so 15 at 100 and 25 at 200.
    expect(torqueReadings(line)).toEqual([
      { turns: 0, torque: 0 },
      { turns: 50, torque: 10 },
      { turns: 100, torque: 15 },
      { turns: 150, torque: 20 },
      { turns: 200, torque: 25 },
      { turns: 250, torque: 30 },
    ]);
  });

  it('is left out where the log could not be read', () => {
    expect(torqueLine(test(null))).toBeNull();
  });

  it.each([
    ['no reading', []],
    ['one reading', [{ turns: 100, torque: 0.02 }]],
    [
      'equal readings',
      [
        { turns: 0, torque: 0 },
        { turns: 0, torque: 0 },
      ],
    ],
  ])('comes out whole with %s', (_, points) => {
    expect(drawn(points)).not.toMatch(/NaN|Infinity/);
  });
});
