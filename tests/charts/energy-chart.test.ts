import { describe, expect, it } from 'vitest';
import { drawEnergyChart } from '../../src/charts/draw-energy-chart.ts';
import { type EnergyChart, energyChart, layOutEnergy } from '../../src/charts/energy-chart.ts';
import type { EnergyAccount, EnergyItem } from '../../src/figures/energy-account.ts';
import type { Figure } from '../../src/figures/figure.ts';

function figure(value: number, u: number): Figure {
  return {
    id: 'account',
    unit: 'J',
    value,
    u,
    basis: 'measured',
    assumptions: [],
    worked: [],
    shares: [],
  };
}

/** An account of joules told by hand; the rest balances it. */
function account(joules: Record<EnergyItem, number>, u = 0): EnergyAccount {
  return new Map(Object.entries(joules).map(([item, value]) => [item as EnergyItem, figure(value, u)]));
}

const plain = { stored: 90, height: 20, left: 10, there: 100, aloft: 40, propeller: 30, rest: 30 };

function bars(of: EnergyChart | null): [string, string, number, number][] {
  return of!.bars.map(({ item, kind, from, to }) => [item, kind, from, to]);
}

describe('the chart of where the energy went', () => {
  it('follows the account: in, off, there, and what took it', () => {
    expect(bars(energyChart(account(plain)))).toEqual([
      ['stored', 'in', 0, 90],
      ['height', 'in', 90, 110],
      ['left', 'off', 100, 110],
      ['there', 'there', 0, 100],
      ['aloft', 'used', 0, 40],
      ['propeller', 'assumed', 40, 70],
      ['rest', 'rest', 70, 100],
    ]);
  });

  it('goes beyond what there was where the air helped', () => {
    const helped = { ...plain, left: 0, stored: 80, aloft: 120, rest: -50 };
    expect(bars(energyChart(account(helped))).slice(3)).toEqual([
      ['aloft', 'used', 0, 120],
      ['propeller', 'assumed', 120, 150],
      ['rest', 'beyond', 100, 150],
    ]);
    const layout = layOutEnergy(energyChart(account(helped))!);
    // By hand: 478 units for 150 J; what there was ends at two thirds of them.
    expect(layout.there).toBeCloseTo(1 + 478 * (100 / 150), 1);
  });

  it('leaves out turns that hold next to nothing', () => {
    const items = bars(energyChart(account({ ...plain, stored: 80.001, left: 0.001 }))).map(([item]) => item);
    expect(items).not.toContain('left');
  });

  it('is laid out on one scale, with the ± at the end of each bar', () => {
    const { bars: placed } = layOutEnergy(energyChart(account(plain, 10))!);
    // By hand: 478 units for 110 + 10 J.
    const aloft = placed.find(({ item }) => item === 'aloft')!;
    expect(aloft.width).toBeCloseTo((478 * 40) / 120, 1);
    expect(aloft.whisker!.from).toBeCloseTo(1 + (478 * 30) / 120, 1);
    expect(aloft.whisker!.to).toBeCloseTo(1 + (478 * 50) / 120, 1);
  });

  it('keeps a bar of next to nothing in sight, and no stroke for a ± of nothing', () => {
    const { bars: placed } = layOutEnergy(energyChart(account({ ...plain, height: 1e-9 }))!);
    expect(placed.find(({ item }) => item === 'height')!.width).toBe(1);
    expect(placed.every(({ whisker }) => whisker === null)).toBe(true);
  });

  it('is none where an item is missing', () => {
    const missing: EnergyAccount = new Map([
      ...account(plain),
      ['aloft', { id: 'a', unit: 'J', absent: 'needs a flight that can count' }],
    ]);
    expect(energyChart(missing)).toBeNull();
    expect(energyChart(new Map())).toBeNull();
  });

  it('hatches what is assumed and says every amount in both units', () => {
    const layout = layOutEnergy(energyChart(account(plain))!);
    const svg = drawEnergyChart(layout, { id: 'e', title: 'T', description: 'D' }, (item) => ({
      name: item,
      metric: `${item} J`,
      imperial: `${item} ft·lbf`,
    }));
    expect(svg).toMatch(/of-assumed"[^>]*fill="url\(#e-hatch\)"/);
    expect(svg.match(/<g class="metric">/g)).toHaveLength(7);
    expect(svg.match(/<g class="imperial">/g)).toHaveLength(7);
    expect(svg).not.toContain('style=');
  });
});
