import { describe, expect, it } from 'vitest';
import type { EntryRecord } from '../../src/almanac/almanac.ts';
import { betterOf } from '../../src/components/plot/better.ts';
import { plotDataOf } from '../../src/components/plot/plot-data-of.ts';
import { toldPlot } from '../../src/components/plot/told-plot.ts';
import type { Figure } from '../../src/figures/figure.ts';
import { figureDefinitions } from '../../src/figures/registry.ts';
import { challengeRecord, entryRecord, figure } from './almanac-fixture.ts';

/** An aircraft whose motors have a figure each. */
function withMotors(figures: readonly Figure[]): EntryRecord {
  const record = entryRecord('twin', 30);
  return {
    ...record,
    figures: { entry: record.figures.entry, motors: figures.map((one) => new Map([[one.id, one]])) },
  };
}

const turns = (value: number) => figure('break-turns', 'turns', value, 20);
/** What is plotted of an aircraft beside one whose motors are alike. */
const plotted = (record: EntryRecord, id: string) =>
  plotDataOf(challengeRecord([30, 40], [record, withMotors([turns(800)])])).entries[0]?.figures.get(id);

describe('what a plot is chosen from', () => {
  it('is every figure that an aircraft has, in the order of the registry, and no other', () => {
    const { figures } = plotDataOf(challengeRecord([30]));
    expect(figures.map(({ id }) => id)).toEqual(['span', 'mean-chord', 'wing-loading']);
    expect(figures[0]).toMatchObject({ name: 'Span', kind: 'length', metric: 'm', imperial: 'in' });
  });

  it('is nothing without an aircraft', () => {
    expect(plotDataOf(challengeRecord([]))).toMatchObject({ figures: [], entries: [] });
  });

  it('takes a figure of motors where one value holds for all', () => {
    expect(plotted(withMotors([turns(900), turns(900)]), 'break-turns')).toEqual({ value: 900, u: 20 });
  });

  it('says where motors differ, and where one of them lacks it', () => {
    const differs = { absent: 'differs from motor to motor' };
    const lacking: Figure = { id: 'break-turns', unit: 'turns', absent: 'needs the skein' };
    expect(plotted(withMotors([turns(900), turns(950)]), 'break-turns')).toEqual(differs);
    expect(plotted(withMotors([turns(900), lacking]), 'break-turns')).toEqual(differs);
  });

  it('gives the reason of an absent figure', () => {
    const record = entryRecord('bare', 30);
    const figures = new Map(record.figures.entry);
    figures.set('span', { id: 'span', unit: 'm', absent: 'needs the wing' });
    expect(plotted({ ...record, figures: { entry: figures, motors: [] } }, 'span')).toEqual({
      absent: 'needs the wing',
    });
  });

  it('says whose time waits for a ruling', () => {
    const record = entryRecord('claim', 30);
    const waiting = { ...record, judged: { ...record.judged, bestCounted: null, bestProvisional: 1 } };
    expect(
      plotDataOf(challengeRecord([30, 20], [waiting, record])).entries.map((one) => one.waiting),
    ).toEqual([true, false]);
  });
});

describe('the better end of a figure', () => {
  it('is told of figures that exist, and of none both ways', () => {
    const known = figureDefinitions.map(({ id }) => id).filter((id) => betterOf(id) !== null);
    // Fifteen are named in better.ts: a name that no figure has any more would be missing here.
    expect(known).toHaveLength(15);
  });

  // Common practice, no source.
  it.for([
    ['best-time', 'more'],
    ['flying-mass', 'less'],
    ['sink-speed', 'less'],
    ['static-margin', null],
    ['no-such-figure', null],
  ] as const)('of %s is %s', ([id, better]) => {
    expect(betterOf(id)).toBe(better);
  });
});

describe('a plot told in a sentence', () => {
  const row = (name: string, x: string, y: string) => ({ entry: { name }, plainX: x, plainY: y });
  const plot = (heights: readonly number[]) => ({ points: heights.map((y) => ({ y })) });
  const told = (rows: readonly ReturnType<typeof row>[], heights: readonly number[]) =>
    toldPlot({ rows, plot: plot(heights) } as unknown as Parameters<typeof toldPlot>[0]);

  it('names both ends and the highest', () => {
    expect(
      told(
        [row('Wren', '5 g', '30 s'), row('Heron', '6 g', '44 s'), row('Crane', '9 g', '20 s')],
        [30, 44, 20],
      ),
    ).toBe(
      '3 aircraft, from 5 g at the left (Wren, 30 s) to 9 g at the right (Crane, 20 s). Highest up stands Heron: 44 s at 6 g.',
    );
  });

  it('draws no tendency from one', () => {
    expect(told([row('Wren', '5 g', '30 s')], [30])).toBe(
      'One aircraft only: Wren, 5 g and 30 s. A single point shows no tendency.',
    );
  });

  it('is empty of nobody', () => {
    expect(told([], [])).toBe('');
  });
});
