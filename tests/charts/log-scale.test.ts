import { describe, expect, it } from 'vitest';
import { logScale } from '../../src/charts/log-scale.ts';

const texts = (low: number, high: number) => logScale(low, high, 0, 100).ticks.map(({ text }) => text);

describe('a logarithmic scale', () => {
  // By hand: the middle of 1 and 100 on a logarithmic ruler is 10, and equal ratios take equal room.
  it('puts the geometric mean in the middle, and equal ratios equally far apart', () => {
    const scale = logScale(1, 100, 0, 200);
    expect(scale.at(10)).toBeCloseTo(100, 9);
    expect(scale.at(40) - scale.at(20)).toBeCloseTo(scale.at(2) - scale.at(1), 9);
  });

  it('holds its values inside its ends', () => {
    const scale = logScale(3, 700, 50, 450);
    expect(scale.at(3)).toBeGreaterThan(50);
    expect(scale.at(700)).toBeLessThan(450);
  });

  it('names one, two and five of each decade', () => {
    expect(texts(1, 100)).toEqual(['1', '2', '5', '10', '20', '50', '100']);
  });

  it('names round steps where the values lie close together', () => {
    expect(texts(30, 48)).toEqual(['30', '35', '40', '45']);
  });

  it('names powers of ten where they lie far apart, and not too many', () => {
    expect(texts(0.001, 1000)).toEqual(['0.001', '0.01', '0.1', '1', '10', '100', '1000']);
    expect(texts(1e-9, 1e9).length).toBeLessThan(8);
  });

  it('puts equal values in the middle', () => {
    const scale = logScale(7, 7, 0, 100);
    expect(scale.at(7)).toBeCloseTo(50, 9);
    expect(scale.ticks.length).toBeGreaterThan(0);
  });

  it.for([
    [0, 5],
    [-1, 5],
    [5, Number.POSITIVE_INFINITY],
    [Number.NaN, 5],
    [6, 5],
  ])('refuses %s to %s', ([low, high]) => {
    expect(() => logScale(low!, high!, 0, 1)).toThrow(RangeError);
  });
});
