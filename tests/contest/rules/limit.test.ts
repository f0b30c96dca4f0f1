import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { holds, parseLimit } from '../../../src/contest/rules/limit.ts';
import type { Kind } from '../../../src/quantities/quantity.ts';
import { limit } from '../invented-challenge.ts';

describe('a limit', () => {
  it.each([
    ['at least 2.4 m', 'length', 2.4, true, null, null],
    ['at most 2 kg', 'mass', null, null, 2, true],
    ['more than 120 g', 'mass', 0.12, false, null, null],
    ['less than 120 g', 'mass', null, null, 0.12, false],
    ['17 dm2 to 19 dm2', 'area', 0.17, true, 0.19, true],
    ['17 to 19 dm2', 'area', 0.17, true, 0.19, true],
    ['38 to 45 %', 'share', 0.38, true, 0.45, true],
    ['2 to 6', 'number', 2, true, 6, true],
    ['at most 9', 'number', null, null, 9, true],
    ['At  least 2,4 m', 'length', 2.4, true, null, null],
    ['at least 10 ft 6 in', 'length', 3.2004, true, null, null],
    ['10 ft 6 in to 12 ft', 'length', 3.2004, true, 3.6576, true],
  ] as const)('"%s" is read', (sentence, kind, low, lowIncluded, high, highIncluded) => {
    const read = limit(sentence, kind);
    expect([read.low?.value ?? null, read.low?.included ?? null]).toEqual([
      low === null ? null : expect.closeTo(low, 12),
      lowIncluded,
    ]);
    expect([read.high?.value ?? null, read.high?.included ?? null]).toEqual([
      high === null ? null : expect.closeTo(high, 12),
      highIncluded,
    ]);
  });

  it('keeps the sentence as it was written', () => {
    expect(limit(' at least  2.4 m ', 'length').written).toBe('at least 2.4 m');
  });

  it('is refused in full sentences, with the accepted forms', () => {
    expect(parseLimit('2.4 m', 'length')).toMatchObject({
      ok: false,
      fault: {
        code: 'not-a-quantity',
        message:
          '"2.4 m" is not a limit. Write "at least", "at most", "more than" or "less than" before the value, or two values with "to" between them.',
        found: '2.4 m',
      },
    });
  });

  it.each([
    ['≥ 2.4 m', 'length', 'at least 2.4 m'],
    ['up to 2 kg', 'mass', 'at most 2 kg'],
    ['max. 2 kg', 'mass', 'at most 2 kg'],
    ['over 2 kg', 'mass', 'more than 2 kg'],
    ['under 2 kg', 'mass', 'less than 2 kg'],
    ['17-19 dm2', 'area', '17 to 19 dm2'],
    ['19 to 17 dm2', 'area', '17 dm2 to 19 dm2'],
  ] as const)('"%s" is refused, and "%s" %s offered', (sentence, kind, suggestion) => {
    expect(parseLimit(sentence, kind)).toMatchObject({ ok: false, fault: { suggestion } });
    expect(parseLimit(suggestion, kind).ok).toBe(true);
  });

  it.each([
    ['', 'length'],
    ['at least', 'length'],
    ['at least 2.4', 'length'],
    ['at least 2.4 kg', 'length'],
    ['at least 2.4 m ± 5 mm', 'length'],
    ['at most 1e309 kg', 'mass'],
    ['to 19 dm2', 'area'],
    ['17 to dm2', 'area'],
    ['at most 1,200 kg', 'mass'],
  ] as [string, Kind][])('"%s" is refused', (sentence, kind) => {
    expect(parseLimit(sentence, kind).ok).toBe(false);
  });
});

describe('holding a limit', () => {
  it('includes the ends of "at least", "at most" and "to"', () => {
    expect(holds(limit('at least 2.4 m', 'length'), 2.4)).toBe(true);
    expect(holds(limit('at most 2.4 m', 'length'), 2.4)).toBe(true);
    expect(holds(limit('17 to 19 dm2', 'area'), 0.17)).toBe(true);
    expect(holds(limit('17 to 19 dm2', 'area'), 0.19)).toBe(true);
  });

  it('leaves out the ends of "more than" and "less than"', () => {
    expect(holds(limit('more than 2.4 m', 'length'), 2.4)).toBe(false);
    expect(holds(limit('less than 2.4 m', 'length'), 2.4)).toBe(false);
  });

  it('takes numbers within a billionth of each other for the same, on either side', () => {
    expect(holds(limit('at least 2.4 m', 'length'), 2.4 * (1 - 1e-10))).toBe(true);
    expect(holds(limit('at least 2.4 m', 'length'), 2.4 * (1 - 1e-8))).toBe(false);
    expect(holds(limit('more than 2.4 m', 'length'), 2.4 * (1 + 1e-10))).toBe(false);
    expect(holds(limit('more than 2.4 m', 'length'), 2.4 * (1 + 1e-8))).toBe(true);
  });

  it('"at least" and "less than" the same value never agree, nor do both fail', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 9999 }),
        fc.double({ min: 0.001, max: 99, noNaN: true }),
        (mm, value) => {
          const [low, high] = [limit(`at least ${mm} mm`, 'length'), limit(`less than ${mm} mm`, 'length')];
          expect(holds(low, value)).toBe(!holds(high, value));
        },
      ),
      { seed: 20270509 },
    );
  });
});

// Free-flight sporting code, class limits as published: F1B wing and tail 17 to 19 dm², airframe at least 200 g, rubber
// at most 30 g; F1G airframe at least 70 g, rubber at most 10 g.
describe('published classes', () => {
  it('F1B is writable', () => {
    expect(holds(limit('17 to 19 dm2', 'area'), 0.1895)).toBe(true);
    expect(holds(limit('17 to 19 dm2', 'area'), 0.1905)).toBe(false);
    expect(holds(limit('at least 200 g', 'mass'), 0.2)).toBe(true);
    expect(holds(limit('at least 200 g', 'mass'), 0.1999)).toBe(false);
    expect(holds(limit('at most 30 g', 'mass'), 0.03)).toBe(true);
    expect(holds(limit('at most 30 g', 'mass'), 0.0301)).toBe(false);
  });

  it('F1G is writable', () => {
    expect(holds(limit('at least 70 g', 'mass'), 0.07)).toBe(true);
    expect(holds(limit('at most 10 g', 'mass'), 0.0101)).toBe(false);
  });
});
