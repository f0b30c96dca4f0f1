import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { ComparedTime } from '../../src/compare/aircraft.ts';
import {
  factorOf,
  isClear,
  splitTimes,
  type TimeNumbers,
  timeNumbers,
} from '../../src/compare/time-ratio.ts';

const exact = (value: number) => ({ value, u: 0 });
const flown = (height: number, use: number, sink: number): TimeNumbers => ({
  // The energy balance: time = use × height / sink.
  time: exact((use * height) / sink),
  height: exact(height),
  use: exact(use),
  sink: exact(sink),
});

describe('the ratio of two times', () => {
  // By hand: 40 m × 0.5 / 0.25 m/s = 80 s; 20 m × 0.6 / 0.4 m/s = 30 s. ln(80/30) = 0.980829; ln 2 = 0.693147;
  // ln(0.5/0.6) = −0.182322; −ln(0.25/0.4) = 0.470004; their sum is 0.980829.
  it('is the product of the ratios of its parts', () => {
    const split = splitTimes(flown(40, 0.5, 0.25), flown(20, 0.6, 0.4));
    expect(split?.total.ln).toBeCloseTo(0.980829, 6);
    expect(split?.parts.height.ln).toBeCloseTo(Math.LN2, 6);
    expect(split?.parts.use.ln).toBeCloseTo(-0.182322, 6);
    expect(split?.parts.sink.ln).toBeCloseTo(0.470004, 6);
  });

  it('has parts that add up to its logarithm, whatever the flights', () => {
    const positive = fc.double({ min: 1e-3, max: 1e3, noNaN: true });
    const flight = fc.tuple(positive, positive, positive).map((parts) => flown(...parts));
    fc.assert(
      fc.property(flight, flight, (one, other) => {
        const split = splitTimes(one, other);
        if (split === null) throw new Error('not split');
        const { height, use, sink } = split.parts;
        expect(height.ln + use.ln + sink.ln).toBeCloseTo(split.total.ln, 9);
        const back = splitTimes(other, one);
        expect(back?.total.ln).toBeCloseTo(-split.total.ln, 9);
      }),
      { seed: 20261125 },
    );
  });

  // By hand: relative uncertainties of 3 % and 4 % make √(0.03² + 0.04²) = 0.05.
  it('has the relative uncertainties of both', () => {
    const one = { ...flown(40, 0.5, 0.25), sink: { value: 0.25, u: 0.0075 } };
    const other = { ...flown(40, 0.5, 0.25), sink: { value: 0.5, u: 0.02 } };
    expect(splitTimes(one, other)?.parts.sink.u).toBeCloseTo(0.05, 12);
  });

  it('cannot be taken where a number is not positive', () => {
    expect(splitTimes(flown(40, 0.5, 0.25), { ...flown(20, 0.5, 0.25), height: exact(0) })).toBeNull();
    expect(splitTimes({ ...flown(20, 0.5, 0.25), time: exact(-1) }, flown(40, 0.5, 0.25))).toBeNull();
  });
});

describe('a part of it', () => {
  it('is clear beyond twice its uncertainty, to either side', () => {
    expect(isClear({ ln: 0.21, u: 0.1 })).toBe(true);
    expect(isClear({ ln: -0.21, u: 0.1 })).toBe(true);
    expect(isClear({ ln: 0.2, u: 0.1 })).toBe(false);
  });

  // By hand: e^0.693147 = 2, and 10 % of it is 0.2.
  it('is a factor with an uncertainty in proportion', () => {
    const { value, u } = factorOf({ ln: Math.LN2, u: 0.1 });
    expect(value).toBeCloseTo(2, 12);
    expect(u).toBeCloseTo(0.2, 12);
  });
});

describe('the numbers of a flight', () => {
  const shown = { metric: '', imperial: '' };
  const number = { value: 1, u: 0, shown };
  const whole: ComparedTime = { told: '1 s', time: number, use: number, height: number, sink: number };

  it('are there where all are', () => {
    expect(timeNumbers(whole)).toMatchObject({ time: { value: 1 }, sink: { value: 1 } });
  });

  it('say what is missing, the flight before all else', () => {
    const glides = { absent: 'needs test glides' };
    expect(timeNumbers({ ...whole, sink: glides, use: glides })).toEqual(glides);
    expect(
      timeNumbers({ ...whole, sink: glides, time: { absent: 'needs a flight that can count' } }),
    ).toEqual({
      absent: 'needs a flight that can count',
    });
  });
});
