import { tickStep as referenceStep, ticks as referenceTicks } from 'd3-array';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { linearScale } from '../../src/charts/scale.ts';
import { multiples, tickStep } from '../../src/charts/ticks.ts';

describe('the ticks of an axis', () => {
  it('stand where an independent library puts them (d3-array)', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1e9 }), fc.integer({ min: 2, max: 10 }), (thousandths, about) => {
        const most = thousandths / 1000;
        const step = tickStep(most, about);
        const reference = referenceStep(0, most, about);
        expect(Math.abs(step - reference) / reference).toBeLessThan(1e-9);
        const expected = referenceTicks(0, most, about);
        const found = multiples(step, 0, most);
        expect(found.length).toBe(expected.length);
        found.forEach((tick, index) => {
          expect(Math.abs(tick - expected[index]!)).toBeLessThan(1e-9 * most);
        });
      }),
      { seed: 12, numRuns: 500 },
    );
  });

  it('have no crumbs of binary fractions', () => {
    expect(multiples(0.1, 0, 0.5)).toEqual([0, 0.1, 0.2, 0.3, 0.4, 0.5]);
    expect(multiples(2, 1, 7)).toEqual([2, 4, 6]);
  });
});

describe('a scale', () => {
  it('runs from its start to the tick at or beyond the largest value', () => {
    // By hand: stretch from 1 to 7.3 over 420: steps of 1, so up to 8; 60 for each.
    const scale = linearScale(1, 7.3, 40, 460, 6);
    expect([scale.low, scale.high]).toEqual([1, 8]);
    expect(scale.ticks.map(({ text }) => text)).toEqual(['1', '2', '3', '4', '5', '6', '7', '8']);
    expect([scale.at(1), scale.at(4), scale.at(8)]).toEqual([40, 220, 460]);
  });

  it('may run upwards on paper, whose numbers go down', () => {
    const scale = linearScale(0, 2, 200, 0, 4);
    expect([scale.at(0), scale.at(0.5), scale.at(2)]).toEqual([200, 150, 0]);
    expect(scale.ticks.map(({ text }) => text)).toEqual(['0.0', '0.5', '1.0', '1.5', '2.0']);
  });

  it.each([
    ['nothing beyond the start', 1],
    ['values below the start', 0.4],
    ['no value at all', Number.NEGATIVE_INFINITY],
  ])('is one wide where there is %s', (_, most) => {
    const scale = linearScale(1, most, 0, 100, 5);
    expect([scale.low, scale.high, scale.at(1), scale.at(2)]).toEqual([1, 2, 0, 100]);
  });
});
