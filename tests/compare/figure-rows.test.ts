import { describe, expect, it } from 'vitest';
import type { ComparedFigure } from '../../src/compare/aircraft.ts';
import { sortFigures } from '../../src/compare/figure-rows.ts';

const shown = { metric: '', imperial: '' };
const there = (id: string, value: number, u: number): ComparedFigure => ({
  id,
  name: id,
  value,
  u,
  basis: 'measured',
  shown,
});
const missing = (id: string): ComparedFigure => ({ id, name: id, absent: 'needs the tailplane’s arm' });
const idsOf = (rows: readonly { readonly id: string }[]) => rows.map(({ id }) => id);

describe('figures side by side', () => {
  const heron = {
    figures: [
      there('mass', 200, 1),
      there('span', 2, 0.003),
      there('area', 30, 1),
      there('strands', 6, 0),
      missing('tail-volume'),
    ],
  };
  const bittern = {
    figures: [
      there('mass', 202, 1),
      there('span', 1.6, 0.004),
      there('area', 33, 0),
      there('strands', 8, 0),
      there('tail-volume', 0.9, 0.02),
      there('run-time', 40, 1),
    ],
  };
  const sorted = sortFigures([heron, bittern]);

  // By hand: span 0.4/0.005 = 80; area 3/1 = 3; mass 2/√2 = 1.41; the strands are exact.
  it('stand with what differs most for its uncertainty first', () => {
    expect(idsOf(sorted.different)).toEqual(['strands', 'span', 'area']);
    expect(sorted.different[1]?.apart).toBeCloseTo(80, 9);
    expect(idsOf(sorted.alike)).toEqual(['mass']);
  });

  it('are kept where fewer than two have them, with the reason', () => {
    expect(idsOf(sorted.alone)).toEqual(['tail-volume', 'run-time']);
    expect(sorted.alone[0]?.cells[0]).toMatchObject({ absent: 'needs the tailplane’s arm' });
    expect(sorted.alone[1]?.cells[0]).toBeUndefined();
  });

  it('at exactly twice the uncertainty are not told apart', () => {
    const of = (value: number) => ({ figures: [there('span', value, 3)] });
    // √(3² + 4²) = 5, so 10 is twice that.
    const other = { figures: [there('span', 10, 4)] };
    expect(idsOf(sortFigures([of(0), other]).alike)).toEqual(['span']);
    expect(idsOf(sortFigures([of(-0.01), other]).different)).toEqual(['span']);
  });

  it('differ where any two of several do', () => {
    const of = (value: number) => ({ figures: [there('span', value, 1)] });
    expect(idsOf(sortFigures([of(1), of(2.5), of(4)]).different)).toEqual(['span']);
  });
});
