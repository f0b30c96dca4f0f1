import { describe, expect, it } from 'vitest';
import { packed, unpacked } from '../../../src/client/plot/plot-data.ts';
import { loading, plotData, plotEntry, time } from './invented-plot-data.ts';

const spring = plotData([
  plotEntry('heron', {
    'wing-loading': { value: 7, u: 0.1 },
    'best-time': { value: 44, u: 0.1 },
    'static-margin': { absent: 'needs the tailplane’s arm' },
  }),
  plotEntry(
    'wren',
    {
      'wing-loading': { value: 5, u: 0 },
      'best-time': { absent: 'needs a flight that can count' },
      'static-margin': { absent: 'needs the tailplane’s arm' },
    },
    { divisions: ['light'], waiting: true },
  ),
]);

const autumn = plotData(
  [plotEntry('heron', { 'best-time': { value: 50, u: 0.1 } }, { challenge: 'autumn' })],
  {
    challenges: new Map([['autumn', 'Autumn Trial']]),
    figures: [time],
    divisions: [{ id: 'heavy', name: 'Heavy' }],
  },
);

describe('what travels to a plot', () => {
  it('arrives as it was sent, through JSON', () => {
    expect(unpacked([JSON.parse(JSON.stringify(packed(spring)))])).toEqual(spring);
  });

  it('names a reason once, however many aircraft have it', () => {
    expect(packed(spring).reasons).toEqual(['needs the tailplane’s arm', 'needs a flight that can count']);
  });

  it('comes together from several challenges, each aircraft with the figures its challenge has', () => {
    const all = unpacked([packed(spring), packed(autumn)]);
    expect(all.entries.map(({ challenge, id }) => `${challenge}/${id}`)).toEqual([
      'spring/heron',
      'spring/wren',
      'autumn/heron',
    ]);
    expect(all.figures.map(({ id }) => id)).toEqual(['wing-loading', 'best-time', 'static-margin']);
    expect(all.divisions.map(({ id }) => id)).toEqual(['light', 'heavy']);
    expect(all.entries[2]!.figures.get(loading.id)).toBeUndefined();
  });
});
