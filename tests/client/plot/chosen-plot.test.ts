import { describe, expect, it } from 'vitest';
import { chosenPlot } from '../../../src/client/plot/chosen-plot.ts';
import { figureKey } from '../../../src/client/plot/figure-key.ts';
import { firstChoice, type PlotChoice } from '../../../src/client/plot/plot-choice.ts';
import type { PlotValue } from '../../../src/client/plot/plot-data.ts';
import { plotData, plotEntry } from './invented-plot-data.ts';

const choice: PlotChoice = { ...firstChoice, x: 'wing-loading', y: 'best-time' };

// 9.80665 N/m² is 10 g/dm² exactly: a kilogram per square metre under standard gravity.
const ten: PlotValue = { value: 9.80665, u: 0.0980665 };
const five: PlotValue = { value: 9.80665 / 2, u: 0 };
const flown = (seconds: number): PlotValue => ({ value: seconds, u: 0.1 });
const heron = plotEntry('heron', { 'wing-loading': ten, 'best-time': flown(44) });
const wren = plotEntry('wren', { 'wing-loading': five, 'best-time': flown(30) }, { divisions: ['light'] });

function chosen(
  changes: Partial<PlotChoice>,
  system: 'metric' | 'imperial' = 'metric',
  more = [heron, wren],
) {
  const found = chosenPlot(plotData(more), { ...choice, ...changes }, system);
  if (found === null) throw new Error('The invented data have no such figure.');
  return found;
}

describe('a plot that was chosen', () => {
  it('stands in the units of the system in force', () => {
    expect(chosen({}).plot.x.label).toBe('Wing loading (g/dm²)');
    expect(chosen({}).plot.points.map(({ x }) => x)).toEqual([expect.closeTo(5, 9), expect.closeTo(10, 9)]);
    expect(chosen({}).plot.points[1]!.ux).toBeCloseTo(0.1, 9);
    // 1 oz/ft² is 3.05151727274 g/dm².
    const imperial = chosen({}, 'imperial');
    expect(imperial.plot.x.label).toBe('Wing loading (oz/ft²)');
    expect(imperial.plot.points[1]!.x).toBeCloseTo(10 / 3.05151727274, 9);
  });

  it('has a table from the smallest to the largest of what lies across', () => {
    expect(chosen({}).rows.map(({ entry, x, y }) => [entry.id, x, y])).toEqual([
      ['wren', '5\u00a0g/dm²', '30.00 ± 0.10\u00a0s'],
      ['heron', '10.00 ± 0.10\u00a0g/dm²', '44.00 ± 0.10\u00a0s'],
    ]);
  });

  it('tells a division apart', () => {
    expect(chosen({ division: 'light' }).plot.points.map(({ marked }) => marked)).toEqual([true, false]);
    expect(chosen({}).plot.points.some(({ marked }) => marked)).toBe(false);
  });

  it('leaves out who lacks a figure, once, with the first reason', () => {
    const bare = plotEntry('bare', {
      'wing-loading': { absent: 'needs the skein' },
      'best-time': { absent: 'needs a flight that can count' },
    });
    const { rows, missing } = chosen({}, 'metric', [heron, bare]);
    expect(rows).toHaveLength(1);
    expect(missing.map(({ entry, figure, absent }) => [entry.id, figure.id, absent])).toEqual([
      ['bare', 'wing-loading', 'needs the skein'],
    ]);
  });

  it.for([0, -0.05])(
    'leaves out a value of %s on a logarithmic axis, and keeps it on a linear one',
    (value) => {
      const odd = plotEntry('odd', { 'static-margin': { value, u: 0.01 }, 'best-time': flown(20) });
      const linear = chosen({ x: 'static-margin' }, 'metric', [odd]);
      expect(linear.rows).toHaveLength(1);
      const log = chosen({ x: 'static-margin', logX: true }, 'metric', [odd]);
      expect(log.rows).toHaveLength(0);
      expect(log.missing.map(({ absent }) => absent)).toEqual([null]);
    },
  );

  it('keeps a time that waits for a ruling off the frontier, unless no axis rests on a flight', () => {
    const claim = plotEntry(
      'claim',
      {
        'wing-loading': five,
        'best-time': flown(90),
        'static-margin': { value: 0.1, u: 0.01 },
      },
      { waiting: true },
    );
    expect(chosen({}, 'metric', [heron, claim]).rows.map(({ best, waiting }) => [best, waiting])).toEqual([
      [false, true],
      [true, false],
    ]);
    expect(chosen({ y: 'static-margin' }, 'metric', [claim]).rows[0]!.waiting).toBe(false);
  });

  it('is none where no such figure is known', () => {
    expect(chosenPlot(plotData([heron]), { ...choice, x: 'spam' }, 'metric')).toBeNull();
  });
});

describe('what is said below a plot', () => {
  it('names which end counts as the better', () => {
    expect(figureKey(chosen({}), null).sentences).toEqual([
      'The broken line is the frontier of the best, with less “Wing loading” and more “Best time” taken as better.',
    ]);
  });

  it('says where there is no better end', () => {
    const odd = plotEntry('odd', { 'static-margin': { value: 0.1, u: 0.01 }, 'best-time': flown(20) });
    expect(figureKey(chosen({ x: 'static-margin' }, 'metric', [odd]), null).sentences).toEqual([
      'No frontier is drawn: of “Static margin” neither more nor less is better in itself.',
    ]);
  });

  it('explains bars where they are drawn', () => {
    expect(figureKey(chosen({ bars: true }), null).sentences).toContain(
      'A bar is one standard uncertainty to each side.',
    );
  });

  it('explains the marks that occur', () => {
    const texts = figureKey(chosen({ division: 'light' }, 'metric', [heron, wren]), 'Light').marks.map(
      ({ text }) => text,
    );
    expect(texts).toEqual(['on the frontier', 'of the division “Light”']);
  });

  it('is silent where nobody is shown', () => {
    expect(figureKey(chosen({}, 'metric', []), null)).toEqual({ marks: [], sentences: [] });
  });
});
