import { describe, expect, it } from 'vitest';
import { figureGroups, figureSheet, groupOf } from '../../src/components/figure-groups.ts';
import { figureDefinitions } from '../../src/figures/registry.ts';
import { figure } from './almanac-fixture.ts';

describe('groups of figures', () => {
  it('name every figure of an aircraft once, and no figure that there is not', () => {
    const grouped = Object.values(figureGroups).flat();
    const ofAircraft = figureDefinitions.filter(({ of }) => of !== 'batch').map(({ id }) => id);
    expect(grouped.toSorted()).toEqual(ofAircraft.toSorted());
  });

  it('leave figures of rubber to a table without groups', () => {
    expect(groupOf('return-ratio')).toBe('other');
  });
});

describe('the sheet of figures', () => {
  const torque = figure('mean-torque', 'N.m', 0.03, 0.01);
  const log = figure('run-time', 's', 20, 0.1);

  it('has the figures of a single kind of motor among the others', () => {
    const sheet = figureSheet({
      entry: new Map([['span', figure('span', 'm', 2, 0.01)]]),
      motors: [new Map([['mean-torque', torque]])],
    });
    expect(sheet.whole.map(({ group, rows }) => [group, rows.map(({ id }) => id)])).toEqual([
      ['airframe', ['span']],
      ['rubber', ['mean-torque']],
    ]);
    expect(sheet.ofMotors).toEqual([]);
  });

  it('has one row for a figure of several kinds of motor, with a gap where one has none', () => {
    const reason = { id: 'run-time', unit: 's', absent: 'needs a thrust log' } as const;
    const sheet = figureSheet({
      entry: new Map(),
      motors: [
        new Map([
          ['run-time', log],
          ['mean-torque', torque],
        ]),
        new Map([
          ['run-time', reason],
          ['mean-torque', torque],
        ]),
      ],
    });
    expect(sheet.whole).toEqual([]);
    expect(
      sheet.ofMotors.map(({ id, cells }) => [id, cells.map((cell) => cell?.figure.value ?? null)]),
    ).toEqual([
      ['mean-torque', [0.03, 0.03]],
      ['run-time', [20, null]],
    ]);
    expect(sheet.absent).toEqual([{ reason: 'needs a thrust log', names: ['Run time on the bench'] }]);
  });

  it('lists what is absent by reason, each name once', () => {
    const reason = 'needs the tailplane’s arm';
    const sheet = figureSheet({
      entry: new Map([
        ['tail-volume', { id: 'tail-volume', unit: '1', absent: reason }],
        ['neutral-point', { id: 'neutral-point', unit: '1', absent: reason }],
      ]),
      motors: [],
    });
    expect(sheet.absent).toEqual([{ reason, names: ['Tail volume', 'Neutral point'] }]);
  });
});
