import { describe, expect, it } from 'vitest';
import { legibleTicks } from '../../src/charts/legible-ticks.ts';
import { levelsUpTo } from '../../src/charts/levels.ts';

const milestones = [10, 20, 40, 80].map((time) => ({ time, label: `${time} s` }));

describe('the levels of a chart', () => {
  it('are the target, every milestone passed and the next one', () => {
    const levels = levelsUpTo(25, { time: 60, label: null }, milestones, (seconds) => `${seconds}`);
    expect(levels.map(({ kind, seconds }) => [kind, seconds])).toEqual([
      ['target', 60],
      ['milestone', 10],
      ['milestone', 20],
      ['milestone', 40],
    ]);
  });

  it('are none where the rules name none', () => {
    expect(levelsUpTo(25, null, [], String)).toEqual([]);
  });
});

describe('words on one line', () => {
  it('are left out where they would run into one another, those that come first last of all', () => {
    const ticks = [0, 10, 20, 100].map((x) => ({ x, text: 'ab', first: x === 20 }));
    expect(legibleTicks(ticks).map(({ x }) => x)).toEqual([20, 100]);
  });

  it('all stay where there is room', () => {
    const ticks = [0, 100, 200].map((x) => ({ x, text: 'ab', first: false }));
    expect(legibleTicks(ticks)).toEqual(ticks);
  });
});
