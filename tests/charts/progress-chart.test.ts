import { describe, expect, it } from 'vitest';
import { drawProgressChart } from '../../src/charts/draw-progress-chart.ts';
import {
  layOutProgress,
  type ProgressLayout,
  type ProgressWords,
  progressChart,
} from '../../src/charts/progress-chart.ts';
import type { AcceptedFlight } from '../../src/contest/history/accepted-flight.ts';
import type { History } from '../../src/contest/history/history.ts';
import { noHistory } from '../contest/history/no-history.ts';

const words: ProgressWords = {
  seconds: 'Seconds',
  days: (first, last) => `${first} to ${last}`,
  tick: ({ date }) => date,
  mark: (seconds, label) => `${seconds} ${label ?? 'target'}`,
  best: (seconds) => `best ${seconds}`,
};

// 100 days from the opening: 10 January is 9 of them on, 1 February 31, 10 April 99.
const season = { opens: '2027-01-01', until: '2027-04-11' };

function flown(date: string, seconds: number): AcceptedFlight {
  return {
    entry: 'reed',
    number: 1,
    builders: [],
    flown: { date, time: null, offset: null, written: date },
    seconds,
    span: null,
    reachedTarget: false,
  };
}

/** A history of flights that each beat the one before, and of others that did not. */
function history(
  steps: readonly AcceptedFlight[],
  others: readonly AcceptedFlight[] = [],
  changes: Partial<History> = {},
): History {
  return {
    ...noHistory,
    flights: [...steps, ...others],
    time: steps.map((flight) => ({ flight, value: flight.seconds, gain: null })),
    ...changes,
  };
}

function milestone(time: number, label: string) {
  return { time, label, first: null, entries: 0 };
}

function laidOut(of: History, days = season): ProgressLayout {
  return layOutProgress(progressChart(of, days, words));
}

/** Shares of the width from the left and of the height from below. */
function shares({ left, right, top, bottom }: ProgressLayout, points: readonly { x: number; y: number }[]) {
  return points.map(({ x, y }) => [
    Number(((x - left) / (right - left)).toFixed(2)),
    Number(((bottom - y) / (bottom - top)).toFixed(2)),
  ]);
}

describe('the staircase of the best time', () => {
  const two = laidOut(history([flown('2027-01-11', 20), flown('2027-03-02', 40)]));

  it('is level to the day of the next step, then upright, and goes on to the last day', () => {
    // By hand: days 10, 60 and 100 of 100; 20 and 40 s of an axis up to 40 s.
    expect(two.up.scale.high).toBe(40);
    expect(shares(two, two.stairs)).toEqual([
      [0.1, 0.5],
      [0.6, 0.5],
      [0.6, 1],
      [1, 1],
    ]);
    expect(shares(two, two.steps)).toEqual([
      [0.1, 0.5],
      [0.6, 1],
    ]);
  });

  it('names the best at its end', () => {
    expect(two.best).toMatchObject({ text: 'best 40', anchor: 'end', at: { x: two.right } });
  });

  it('stands upright where two steps were flown on one day', () => {
    const day = laidOut(history([flown('2027-01-11', 20), flown('2027-01-11', 40)]));
    expect(shares(day, day.steps)).toEqual([
      [0.1, 0.5],
      [0.1, 1],
    ]);
  });

  it('reaches back to a flight before the opening, and on to one after the last day', () => {
    const { first, last } = progressChart(
      history([flown('2026-12-30', 20)], [flown('2027-04-12', 3)]),
      season,
      words,
    );
    expect([first, last]).toEqual(['2026-12-30', '2027-04-12']);
  });
});

describe('the times with a name', () => {
  it('are the target, the milestones passed and the next one, but none beyond', () => {
    const { marks } = progressChart(
      history([flown('2027-01-11', 30)], [], {
        target: { time: 60, label: null },
        milestones: [milestone(20, 'a'), milestone(30, 'b'), milestone(90, 'c'), milestone(600, 'd')],
      }),
      season,
      words,
    );
    expect(marks.map(({ kind, text }) => [kind, text])).toEqual([
      ['target', '60 target'],
      ['milestone', '20 a'],
      ['milestone', '30 b'],
      ['milestone', '90 c'],
    ]);
  });

  it('keep clear of the staircase: at the left where it comes late, at the right where it came early', () => {
    const late = laidOut(history([flown('2027-04-01', 100)], [], { target: { time: 50, label: null } }));
    const early = laidOut(
      history([flown('2027-01-02', 20), flown('2027-01-03', 100)], [], { target: { time: 50, label: null } }),
    );
    expect(late.marks.map(({ name }) => name?.anchor)).toEqual(['start']);
    expect(early.marks.map(({ name }) => name?.anchor)).toEqual(['end']);
  });

  it('give up the names there is no room for, never the target’s, and keep their lines', () => {
    const milestones = [50, 51, 52, 53, 54, 55].map((time) => milestone(time, `of ${time}`));
    const { marks } = laidOut(
      history([flown('2027-01-11', 500)], [], { target: { time: 52.5, label: null }, milestones }),
    );
    expect(marks).toHaveLength(7);
    expect(marks[0]?.name?.text).toBe('52.5 target');
    expect(marks.filter(({ name }) => name === null).length).toBeGreaterThan(0);
  });

  it('cut a very long name', () => {
    const label = 'The considerably overdue and rather long afternoon';
    const { marks } = laidOut(history([flown('2027-01-11', 30)], [], { target: { time: 60, label } }));
    // Thirty letters, the last of them the sign that something is missing.
    expect(marks[0]?.name?.text).toBe('60 The considerably overdue a…');
  });
});

describe('a progress chart', () => {
  const names = { id: 'p', title: 'a <b> & c', description: 'd' };

  it('draws flights at one place once', () => {
    const many = Array.from({ length: 3000 }, () => flown('2027-02-01', 10));
    expect(laidOut(history([flown('2027-01-11', 30)], many)).others).toHaveLength(1);
  });

  it.each([
    ['no flight', noHistory],
    ['one flight', history([flown('2027-01-11', 30)])],
    ['one flight on the last day', history([flown('2027-04-11', 30)])],
    ['equal flights', history([flown('2027-01-11', 30)], [flown('2027-01-11', 30), flown('2027-02-11', 30)])],
    ['a time of nothing', history([flown('2027-01-11', 0)])],
  ])('comes out whole with %s', (_, of) => {
    const svg = drawProgressChart(laidOut(of), names);
    expect(svg).not.toMatch(/NaN|Infinity|undefined/);
    expect(svg.match(/class="chart-dot"/g)?.length ?? 0).toBe(of.time.length);
  });

  it('comes out whole for a season of one day', () => {
    const day = { opens: '2027-01-11', until: '2027-01-11' };
    const layout = laidOut(history([flown('2027-01-11', 30)]), day);
    expect(shares(layout, layout.steps)[0]?.[0]).toBe(0.5);
    expect(drawProgressChart(layout, names)).not.toMatch(/NaN|Infinity|undefined/);
  });

  it('carries its title and escapes what people wrote', () => {
    const svg = drawProgressChart(
      laidOut(history([flown('2027-01-11', 30)], [], { target: { time: 60, label: '<i>' } })),
      names,
    );
    expect(svg).toContain('<title id="p-title">a &lt;b&gt; &amp; c</title>');
    expect(svg).toContain('60 &lt;i&gt;');
    expect(svg).not.toContain('<i>');
  });
});
