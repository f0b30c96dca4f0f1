import { describe, expect, it } from 'vitest';
import { meanOfThrows } from '../../src/flight/glide-throws.ts';

const throwOf = (over: number, under: number, u = 0) => ({
  over: { value: over, u: u * over },
  under: { value: under, u: u * under },
});

describe('the mean of test glides', () => {
  it('is that of the quotients, not the quotient of the sums', () => {
    // By hand: 30/3 and 20/4 m: (10 + 5)/2 = 7.5.
    expect(meanOfThrows([throwOf(30, 3), throwOf(20, 4)])!.mean).toBe(7.5);
  });

  it('is never surer than 20 % for one throw and 15 % for more', () => {
    // Common practice, no source: half a metre of wind per second does that much.
    expect(meanOfThrows([throwOf(30, 3)])).toEqual({ mean: 10, ofReadings: 0, beyondReadings: 2 });
    expect(meanOfThrows([throwOf(30, 3), throwOf(40, 4)])!.beyondReadings).toBeCloseTo(1.5, 12);
  });

  it('counts what the readings make of that', () => {
    // By hand: both readings to 9 %: √2·0.09·10 = 1.2728; √(2² − 1.2728²) = 1.5427.
    const { ofReadings, beyondReadings } = meanOfThrows([throwOf(30, 3, 0.09)])!;
    expect(ofReadings).toBeCloseTo(1.27279, 5);
    expect(beyondReadings).toBeCloseTo(1.54272, 5);
    expect(Math.hypot(ofReadings, beyondReadings)).toBeCloseTo(2, 12);
  });

  it('halves what four equal readings say of one', () => {
    const four = meanOfThrows(Array.from({ length: 4 }, () => throwOf(30, 3, 0.09)))!;
    expect(four.ofReadings).toBeCloseTo(1.27279 / 2, 5);
  });

  it('takes the scatter of the throws where that is larger', () => {
    // By hand: 6, 10, 14: s = 4, s/√3 = 2.3094 > 15 % of 10.
    const { mean, beyondReadings } = meanOfThrows([throwOf(6, 1), throwOf(10, 1), throwOf(14, 1)])!;
    expect(mean).toBe(10);
    expect(beyondReadings).toBeCloseTo(2.3094, 4);
  });

  it('is not there without throws', () => {
    expect(meanOfThrows([])).toBeNull();
  });
});
