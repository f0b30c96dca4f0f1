import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { TimingRules } from '../../src/model/challenge.ts';
import { parseQuantity } from '../../src/quantities/parse.ts';
import type { Quantity } from '../../src/quantities/quantity.ts';
import { officialTime } from '../../src/timing/official-time.ts';

const rules: TimingRules = {
  starts: 'release',
  stops: { touchdown: true, outOfSight: null },
  combine: 'mean',
  resolution: '0.1',
  round: 'down',
  uncertainty: { watch: 0.1, video: 0.05 },
};

function watch(text: string): Quantity {
  const parsed = parseQuantity(text, 'time');
  if (!parsed.ok) throw new Error(parsed.fault.message);
  return parsed.value;
}

function timed(texts: readonly string[], changes: Partial<TimingRules> = {}, ruled: number | null = null) {
  return officialTime({ watches: texts.map(watch), timedBy: 'watch' }, { ...rules, ...changes }, ruled);
}

describe('rounding of the mean of the watches', () => {
  // Free-flight sporting code F1.2.6 (2019): contests, to the nearest second; 5.1.1.4: records, truncated.
  const second = { resolution: '1' };
  it.each([
    ['100.62 s', 'nearest', 101],
    ['100.70 s', 'nearest', 101],
    ['100.62 s', 'down', 100],
    ['100.70 s', 'down', 100],
  ] as const)('%s rounded %s is %i s', (text, round, expected) => {
    expect(timed([text], { ...second, round }).seconds).toBe(expected);
  });

  it('combines 100.62 s and 100.70 s before it rounds', () => {
    expect(timed(['100.62 s', '100.70 s'], { ...second, round: 'nearest' }).seconds).toBe(101);
    expect(timed(['100.62 s', '100.70 s'], { ...second, round: 'down' }).seconds).toBe(100);
  });
});

// Expected values below are worked out by hand.
describe('the official time', () => {
  it('is the exact mean, not the binary one: (41.1 + 41.3) / 2 is 41.2', () => {
    expect(timed(['41.1 s', '41.3 s']).seconds).toBe(41.2);
    expect(timed(['41.62 s', '41.80 s'], { resolution: '0.01' }).seconds).toBe(41.71);
  });

  it('keeps every tenth of a second that is written as one', () => {
    for (let tenths = 0; tenths < 6000; tenths++)
      expect(timed([`${(tenths / 10).toFixed(1)} s`]).seconds).toBe(Number((tenths / 10).toFixed(1)));
  });

  it('keeps minutes and seconds: 2:05.3 is 125.3 s', () => {
    expect(timed(['2:05.3']).seconds).toBe(125.3);
  });

  it('rounds a half up and less than a half down', () => {
    expect(timed(['41.65 s'], { round: 'nearest' }).seconds).toBe(41.7);
    expect(timed(['41.649 s'], { round: 'nearest' }).seconds).toBe(41.6);
  });

  it('rounds down a mean that is no finite decimal: 125.0 / 3 is 41.6', () => {
    expect(timed(['41.6 s', '41.7 s', '41.7 s']).seconds).toBe(41.6);
  });

  it('can be the lowest or the middle watch', () => {
    expect(timed(['42.0 s', '41.2 s', '41.9 s'], { combine: 'lowest' }).seconds).toBe(41.2);
    expect(timed(['42.0 s', '41.2 s', '41.9 s'], { combine: 'median' }).seconds).toBe(41.9);
  });

  it('takes the mean of the middle two where the watches are even in number', () => {
    expect(timed(['43.0 s', '41.2 s', '41.9 s', '42.1 s'], { combine: 'median' }).seconds).toBe(42);
  });

  it('rounds to a resolution that is no power of ten', () => {
    expect(timed(['41.39 s'], { resolution: '0.2' }).seconds).toBe(41.2);
    expect(timed(['41.30 s'], { resolution: '0.2', round: 'nearest' }).seconds).toBe(41.4);
  });

  it('is a ruled time as it is, whatever the resolution', () => {
    const ruled = timed(['41.62 s'], {}, 43.17);
    expect(ruled).toEqual({ seconds: 43.17, u: 0.1, ruled: true, explanation: 'ruled to be 43.17 s' });
  });
});

describe('the uncertainty of an official time', () => {
  // √(u_watch²/n + resolution²/12), the rounding as a rectangle: JCGM 100:2008, 4.3.7; numbers by hand.
  it('is √(0.01/2 + 0.01/12) = 0.0763763 s for the mean of two watches', () => {
    expect(timed(['41.62 s', '41.80 s']).u).toBeCloseTo(0.0763763, 7);
  });

  it.each(['lowest', 'median'] as const)(
    'counts one watch for the %s: √(0.01 + 0.01/12) = 0.1040833 s',
    (combine) => {
      expect(timed(['41.62 s', '41.80 s', '41.9 s'], { combine }).u).toBeCloseTo(0.1040833, 7);
    },
  );

  it('is that of the video where the time was read from one: √(0.0025 + 0.01/12) = 0.0577350 s', () => {
    expect(officialTime({ watches: [watch('41.6 s')], timedBy: 'video' }, rules, null).u).toBeCloseTo(
      0.057735,
      6,
    );
  });
});

describe('the explanation of an official time', () => {
  it('names the readings as they were written and the rounding', () => {
    expect(timed(['41.62 s', '41.80 s']).explanation).toBe(
      'mean of 41.62 s and 41.80 s, rounded down to 0.1 s',
    );
  });

  it('says how a single reading came about', () => {
    expect(timed(['41.62 s'], { round: 'nearest' }).explanation).toBe(
      'one watch at 41.62 s, rounded to the nearest 0.1 s',
    );
    const video = officialTime({ watches: [watch('41.62 s')], timedBy: 'video' }, rules, null);
    expect(video.explanation).toBe('41.62 s from the video, rounded down to 0.1 s');
  });
});

describe('laws of the official time', () => {
  const hundredths = fc.array(fc.integer({ min: 1, max: 60_000 }), { minLength: 1, maxLength: 5 });
  const how = fc.constantFrom('mean', 'median', 'lowest' as const);
  const texts = (values: readonly number[]) => values.map((value) => `${(value / 100).toFixed(2)} s`);

  it('the order of the watches never matters', () => {
    fc.assert(
      fc.property(hundredths, how, (values, combine) => {
        const straight = timed(texts(values), { combine });
        const turned = timed(texts([...values].reverse()), { combine });
        expect(turned.seconds).toBe(straight.seconds);
      }),
      { seed: 20270509, numRuns: 300 },
    );
  });

  it('lies between the lowest and the highest watch, less one resolution', () => {
    fc.assert(
      fc.property(hundredths, how, (values, combine) => {
        const { seconds } = timed(texts(values), { combine });
        expect(seconds).toBeLessThanOrEqual(Math.max(...values) / 100);
        expect(seconds).toBeGreaterThan(Math.min(...values) / 100 - 0.1);
      }),
      { seed: 20270509, numRuns: 300 },
    );
  });
});

describe('misprints of published results', () => {
  it.each(['9:94', '8:000'])('"%s" is no time', (text) => {
    expect(parseQuantity(text, 'time').ok).toBe(false);
  });
});
