import { describe, expect, it } from 'vitest';
import { changesBetween, figureChanges } from '../../src/components/setup-changes.ts';
import type { Design } from '../../src/model/design.ts';
import { design, entryRecord, figure, figureSet, quantity } from './almanac-fixture.ts';

/** Each change as "label: before → after", values without their ±. */
function told(before: Design, after: Design): string[] {
  const text = (row: ReturnType<typeof changesBetween>[number]['before']): string => {
    if (row === null) return 'nothing';
    return 'measures' in row ? row.measures.map((one) => one.metricPlain).join(', ') : row.text;
  };
  return changesBetween(before, after).map((change) =>
    `${change.label}: ${text(change.before)} → ${text(change.after)}`.replaceAll('\u00a0', ' '),
  );
}

describe('changes between two setups', () => {
  it('are none between equal designs', () => {
    expect(changesBetween(design, structuredClone(design))).toEqual([]);
  });

  it('hold the value before and after, and what came or went', () => {
    const later: Design = {
      ...design,
      balance: quantity('length', 0.0925, 0.002, '92.5 mm'),
      wing: { ...design.wing, incidence: null },
      tailplane: {
        span: quantity('length', 0.457, 0.0045, '457 mm'),
        area: null,
        arm: null,
        incidence: null,
      },
      structure: { wing: 'balsa and film' },
    };
    expect(told(design, later)).toEqual([
      'Wing incidence: 3° → nothing',
      'Tailplane span: nothing → 457 mm',
      'Balance behind the leading edge: 80 mm → 92.5 mm',
      'wing: balsa and tissue → balsa and film',
    ]);
  });

  it('show what the builder wrote, not what an official measured', () => {
    const inspected = {
      span: quantity('length', 1.98, 0.004, '1.98 m'),
      wingArea: null,
      airframe: null,
      rubber: null,
      balance: null,
    };
    const later = { ...design, wing: { ...design.wing, span: quantity('length', 2.2, 0.005, '2.20 m') } };
    expect(told({ ...design, inspected }, { ...later, inspected })).toEqual(['Span: 2.00 m → 2.20 m']);
  });

  it('name the kind of motor where there are several', () => {
    const [motor] = design.motors;
    if (motor === undefined) throw new Error('The design has no motor.');
    const two = { ...design, motors: [motor, motor] };
    const later = { ...design, motors: [motor, { ...motor, count: 4 }] };
    expect(told(two, later)).toEqual(['Kind 2: Number of motors: 2 → 4']);
  });
});

describe('figures of a setup', () => {
  it('are shown where they came out otherwise', () => {
    const record = entryRecord('heron', 44);
    const before = figureSet([
      figure('wing-loading', 'N/m2', 7.9, 0.2),
      figure('flying-mass', 'kg', 0.3, 0.001),
    ]);
    const after = figureSet([
      figure('wing-loading', 'N/m2', 7.1, 0.2),
      figure('flying-mass', 'kg', 0.3, 0.001),
    ]);
    const rows = figureChanges({ ...record, setupFigures: [before, after] }, 1);
    expect(rows.map(({ label }) => label)).toEqual(['Wing loading']);
  });
});
