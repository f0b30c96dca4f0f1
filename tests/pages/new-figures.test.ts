import { describe, expect, it } from 'vitest';
import { newFigures } from '../../src/components/new-figures.ts';
import type { Figure, PresentFigure } from '../../src/figures/figure.ts';

function figure(id: string, value: number, u: number): PresentFigure {
  return { id, value, u, unit: '1', basis: 'measured', assumptions: [], worked: [], shares: [] };
}

function absent(id: string): Figure {
  return { id, unit: '1', absent: 'needs the balance' };
}

const setOf = (...figures: Figure[]) => ({
  entry: new Map(figures.map((one) => [one.id, one])),
  motors: [],
});

describe('figures that another set does not tell', () => {
  it('are those that differ by more than half their ±', () => {
    const told = setOf(figure('glide-ratio', 14, 2), figure('energy-use', 0.4, 0.02));
    const flown = setOf(figure('glide-ratio', 13, 2), figure('energy-use', 0.411, 0.02));
    expect([...newFigures(flown, told).entry.keys()]).toEqual(['energy-use']);
  });

  it('are those that it lacks or cannot work out', () => {
    const flown = setOf(figure('best-time', 41, 0.1), figure('static-margin', 0.1, 0.02));
    const told = setOf(absent('static-margin'));
    expect([...newFigures(flown, told).entry.keys()]).toEqual(['best-time', 'static-margin']);
  });
});
