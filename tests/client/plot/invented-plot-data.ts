import type { PlotData, PlotEntry, PlotFigure, PlotValue } from '../../../src/client/plot/plot-data.ts';

// Invented figures of invented aircraft, in SI.

export const loading: PlotFigure = {
  id: 'wing-loading',
  name: 'Wing loading',
  kind: 'loading',
  metric: 'g/dm2',
  imperial: 'oz/ft2',
  better: 'less',
  ofFlight: false,
};

export const time: PlotFigure = {
  id: 'best-time',
  name: 'Best time',
  kind: 'time',
  metric: 's',
  imperial: 's',
  better: 'more',
  ofFlight: true,
};

export const margin: PlotFigure = {
  id: 'static-margin',
  name: 'Static margin',
  kind: 'share',
  metric: '%',
  imperial: '%',
  better: null,
  ofFlight: false,
};

export function plotEntry(
  id: string,
  figures: Readonly<Record<string, PlotValue>>,
  changes: Partial<PlotEntry> = {},
): PlotEntry {
  return {
    challenge: 'spring',
    id,
    name: `Model ${id}`,
    divisions: [],
    waiting: false,
    figures: new Map(Object.entries(figures)),
    ...changes,
  };
}

export function plotData(entries: readonly PlotEntry[], changes: Partial<PlotData> = {}): PlotData {
  return {
    challenges: new Map([['spring', 'Spring Trial']]),
    figures: [loading, time, margin],
    divisions: [{ id: 'light', name: 'Light' }],
    entries,
    ...changes,
  };
}
