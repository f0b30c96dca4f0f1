import { describe, expect, it } from 'vitest';
import { drawFlightsChart } from '../../src/charts/draw-flights-chart.ts';
import { type FlightsLayout, flightsChart, layOutFlights } from '../../src/charts/flights-chart.ts';
import type { Level } from '../../src/charts/levels.ts';
import { boxOf, meet } from '../../src/charts/placed-name.ts';
import type { JudgedFlight, Status } from '../../src/contest/standing.ts';

const words = {
  seconds: 'Seconds',
  days: (first: string, last: string) => `${first} to ${last}`,
  day: (date: string) => date.slice(5),
  best: (seconds: number) => `${seconds} s`,
  setup: (id: string | null) => id ?? 'first',
};

function flown(
  number: number,
  date: string,
  seconds: number,
  changes: Partial<JudgedFlight> = {},
): JudgedFlight {
  return {
    number,
    date,
    official: { seconds, u: 0.1, ruled: false, explanation: '' },
    status: 'accepted',
    reason: null,
    setup: null,
    score: seconds,
    scoreU: 0.1,
    counted: true,
    stale: [],
    reachedTarget: false,
    ...changes,
  };
}

function laidOut(
  flights: readonly JudgedFlight[],
  best: number | null,
  levels: readonly Level[] = [],
): FlightsLayout {
  return layOutFlights(flightsChart({ flights, bestCounted: best, bestProvisional: null }, levels, words));
}

function drawn(layout: FlightsLayout): string {
  return drawFlightsChart(layout, { id: 'f', title: 'T', description: 'D' });
}

/** Shares of the width from the left and of the height from below. */
function shares({ left, right, top, bottom, marks }: FlightsLayout): number[][] {
  return marks.map(({ x, y }) => [
    Number(((x - left) / (right - left)).toFixed(3)),
    Number(((bottom - y) / (bottom - top)).toFixed(3)),
  ]);
}

describe('the flights of an aircraft over time', () => {
  it('stand by date, on one day by number, with a wider step to the next day', () => {
    const flights = [flown(3, '2031-05-02', 40), flown(2, '2031-05-01', 20), flown(1, '2031-05-01', 10)];
    // By hand: half a step, a step, 1.6 steps to the next day, half a step: 3.6 steps in all. The
    // ± of the longest reaches above 40 s, so the axis goes to 50 s.
    expect(shares(laidOut(flights, 3))).toEqual([
      [0.139, 0.2],
      [0.417, 0.4],
      [0.861, 0.8],
    ]);
  });

  it('are told apart by the shape of their marks', () => {
    const statuses: Status[] = ['accepted', 'provisional', 'ineligible', 'attempt', 'withdrawn'];
    const layout = laidOut(
      statuses.map((status, index) => flown(index + 1, '2031-05-01', 20, { status })),
      1,
    );
    const shapes = [...drawn(layout).matchAll(/chart-flight (\w+)" d="M[\d.]+ [\d.]+([^"]+)"/g)];
    expect(shapes.map(([, kind]) => kind)).toEqual(['accepted', 'provisional', 'apart', 'attempt', 'struck']);
    // The first two are discs, full and open; every other has an outline of its own.
    expect(new Set(shapes.map(([, , outline]) => outline)).size).toBe(4);
  });

  it('wear a ring and the time where they are the best', () => {
    const layout = laidOut([flown(1, '2031-05-01', 10), flown(2, '2031-05-02', 20)], 2);
    expect(layout.best?.text).toBe('20 s');
    expect(layout.marks.map(({ best }) => best)).toEqual([false, true]);
    expect(drawn(layout).match(/chart-best/g)).toHaveLength(1);
  });

  it('have a bar for their ± where it is more than the mark covers', () => {
    // By hand: 216 units for 10 s; ± 1 s is 43 of them, ± 0.1 s is 4, less than a mark of 10.
    const official = { seconds: 9, u: 1, ruled: false, explanation: '' };
    const [bar, ...others] = laidOut(
      [flown(1, '2031-05-01', 9, { official }), flown(2, '2031-05-01', 9)],
      1,
    ).bars;
    expect(others).toEqual([]);
    expect(bar!.bottom - bar!.top).toBeCloseTo(43.2, 1);
  });

  it('have a line where the setup changes, named after the new one', () => {
    const flights = [
      flown(1, '2031-05-01', 10),
      flown(2, '2031-05-02', 20, { setup: 'light' }),
      flown(3, '2031-05-03', 20, { setup: 'light' }),
    ];
    const layout = laidOut(flights, 2);
    expect(layout.setups.map(({ name }) => name?.text)).toEqual(['light']);
    expect(layout.setups[0]!.x).toBeGreaterThan(layout.marks[0]!.x);
    expect(layout.setups[0]!.x).toBeLessThan(layout.marks[1]!.x);
  });

  it('show target and milestones, but none far above every flight', () => {
    const levels: Level[] = [
      { kind: 'target', seconds: 900, text: 'Target' },
      { kind: 'milestone', seconds: 30, text: 'Half a minute' },
    ];
    const layout = laidOut([flown(1, '2031-05-01', 10), flown(2, '2031-05-02', 20)], 2, levels);
    expect(layout.levels.map(({ kind }) => kind)).toEqual(['milestone']);
    expect(layout.up.scale.high).toBe(30);
  });

  it('keep their words apart, forty on one day with ten setups', () => {
    const flights = Array.from({ length: 40 }, (_, index) =>
      flown(index + 1, '2031-05-01', 20 + index, { setup: `setup-${Math.floor(index / 4)}` }),
    );
    const layout = laidOut(flights, 40);
    const boxes = [...layout.setups.map(({ name }) => name), layout.best].flatMap((name) =>
      name === null ? [] : [boxOf(name)],
    );
    expect(boxes.length).toBeGreaterThan(3);
    for (const [index, box] of boxes.entries())
      expect(boxes.slice(index + 1).some((other) => meet(box, other))).toBe(false);
    const numbers = layout.numbers.map(({ x }) => x);
    for (const [index, x] of numbers.slice(1).entries()) expect(x - numbers[index]!).toBeGreaterThan(15);
    expect(layout.numbers.some(({ text, best }) => text === '40' && best)).toBe(true);
    expect(layout.days).toHaveLength(1);
  });

  it('reach from one second to nine hundred', () => {
    const layout = laidOut([flown(1, '2031-05-01', 1), flown(2, '2031-05-01', 900)], 2);
    expect(layout.up.scale.high).toBe(1000);
    for (const { y } of layout.marks) {
      expect(y).toBeLessThan(layout.bottom);
      expect(y).toBeGreaterThan(layout.top);
    }
  });

  it('take a month for a day where no more is told', () => {
    const layout = laidOut([flown(1, '2031-05', 10), flown(2, '2031-05-02', 20)], 2);
    expect(layout.days.map(({ name }) => name?.text)).toEqual(
      ['', '02'].map((_, index) => ['05', '05-02'][index]),
    );
    expect(layout.label).toBe('2031-05 to 2031-05-02');
  });

  it.each([
    ['none', []],
    ['one', [flown(1, '2031-05-01', 10)]],
    ['equal ones', [flown(1, '2031-05-01', 10), flown(2, '2031-05-01', 10)]],
    ['one of no time at all', [flown(1, '2031-05-01', 0)]],
  ])('come out whole with %s', (_, flights) => {
    expect(drawn(laidOut(flights, flights.length === 0 ? null : 1))).not.toMatch(/NaN|Infinity/);
  });

  it('escape what people wrote', () => {
    const svg = drawn(
      laidOut([flown(1, '2031-05-01', 10), flown(2, '2031-05-01', 20, { setup: '<b>&' })], null),
    );
    expect(svg).toContain('&lt;b&gt;&amp;');
  });
});
