import { describe, expect, it } from 'vitest';
import { drawLineChart } from '../../src/charts/draw-line-chart.ts';
import { layOutLineChart } from '../../src/charts/line-chart.ts';
import { linearScale, scaleInUnit } from '../../src/charts/scale.ts';
import { thrustChart, thrustLine, thrustReadings } from '../../src/charts/thrust-chart.ts';
import { torqueChart } from '../../src/charts/torque-chart.ts';
import { withWorkingPoint } from '../../src/charts/working-point.ts';
import type { ThrustPoint } from '../../src/model/bench-log.ts';

const words = { time: 'Seconds', thrust: 'Newton', mean: 'mean', turns: 'Turns', torque: 'Torque' };

/** A rig that reads 0.1 N at rest; 1 N above it from 1 to 11 s, then at rest to 40 s. */
const log: readonly ThrustPoint[] = Array.from({ length: 401 }, (_, index) => ({
  time: index / 10,
  thrust: index >= 10 && index <= 110 ? 1.1 : 0.1,
}));

describe('the chart of a thrust log', () => {
  const line = thrustLine(log)!;

  it('has what the rig reads at rest taken off', () => {
    expect(line.points[0]!.y).toBeCloseTo(0, 12);
    expect(line.points[50]!.y).toBeCloseTo(1, 12);
  });

  it('shades the run and has the mean over it', () => {
    const { window, level, left, right } = layOutLineChart(thrustChart(line, 0.99, words, null));
    // By hand: an axis of 40 s; the run from 1 to 11 s, less a twentieth of a reading's step at either end.
    expect((window!.left - left) / (right - left)).toBeCloseTo(1 / 40, 2);
    expect((window!.right - left) / (right - left)).toBeCloseTo(11 / 40, 2);
    expect(level!.from.x).toBe(window!.left);
    expect(level!.to).toBe(window!.right);
  });

  it('is told in numbers at round times', () => {
    expect(thrustReadings(line).map(({ time }) => time)).toEqual([0, 5, 10, 15, 20, 25, 30, 35, 40]);
    expect(thrustReadings(line)[2]!.thrust).toBeCloseTo(1, 12);
  });

  it('is none where the log shows no thrust', () => {
    expect(thrustLine(log.map(({ time }) => ({ time, thrust: 0 })))).toBeNull();
  });

  it('can be read in both systems of units', () => {
    const imperial = { label: 'ozf', per: 3.5969 };
    const svg = drawLineChart(layOutLineChart(thrustChart(line, null, words, imperial)), {
      id: 't',
      title: 'T',
      description: 'D',
    });
    expect(svg).toMatch(/<g class="metric">.*Newton.*<\/g><g class="imperial">.*ozf.*<\/g>/);
  });
});

describe('a scale in another unit', () => {
  it('has round ticks of its own at the same places', () => {
    // One inch is 25.4 mm: 2 in lie where 50.8 mm do.
    const scale = linearScale(0, 100, 0, 1000, 5);
    const inInches = scaleInUnit(scale, 1 / 25.4, 5);
    expect(inInches.ticks.map(({ text }) => text)).toEqual(['0', '1', '2', '3']);
    expect(inInches.at(2)).toBeCloseTo(508, 9);
  });
});

describe('where a flight worked on a curve', () => {
  const line = [
    { x: 200, y: 30 },
    { x: 100, y: 10 },
    { x: 0, y: 0 },
  ];
  const chart = torqueChart(line, { x: 200, y: 30 }, words);

  it('is on the line at its turns', () => {
    // By hand: half way between 100 and 200 turns, 10 and 30 N·mm.
    expect(withWorkingPoint(chart, line, 150, 0, 'flight 1').working).toEqual({
      at: { x: 150, y: 20 },
      name: 'flight 1',
    });
  });

  it('has its ± shaded', () => {
    expect(withWorkingPoint(chart, line, 150, 20, 'flight 1').window).toEqual({ from: 130, to: 170 });
  });

  it('is beside the end of a line that does not go so far, with the axis drawn on to it', () => {
    const beyond = withWorkingPoint(chart, line, 240, 10, 'flight 1');
    expect(beyond.working!.at).toEqual({ x: 240, y: 30 });
    expect(beyond.across.most).toBe(250);
    const { working, right } = layOutLineChart(beyond);
    expect(working!.at.x).toBeLessThanOrEqual(right);
  });

  it('is nowhere on a line without points', () => {
    expect(withWorkingPoint(chart, [], 150, 0, 'flight 1').working).toBeNull();
  });
});
