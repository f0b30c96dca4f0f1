import { describe, expect, it } from 'vitest';
import { reading } from '../../../src/client/enter/reading.ts';

describe('what was understood of a text', () => {
  it('is told in both systems of units, with its ±', () => {
    // 10 ft 6 in = 126 in = 3.2004 m (1 in = 25.4 mm exactly, international agreement of 1959).
    expect(reading(['wing', 'span'], '10 ft 6 in ± 0.3 in')).toEqual({
      metric: '3.2004 ± 0.0076\u00a0m',
      imperial: '126.00 ± 0.30\u00a0in',
    });
  });

  it('reads minutes and seconds, and a comma for the decimals', () => {
    expect(reading(['flights', 0, 'watches', 0], '1:05,3')?.metric).toMatch(/^65\.3/);
  });

  it('is there for fields of setups, of lists and of names of the builder’s own', () => {
    expect(reading(['setups', 0, 'wing', 'span'], '3 m')).not.toBe(null);
    expect(reading(['motors', 0, 'at', 1], '80 cm')).not.toBe(null);
    expect(reading(['mass', 'parts', 'the tail'], '38 g')).not.toBe(null);
  });

  it('is nothing for what is no quantity, or cannot be read', () => {
    expect(reading(['name'], '3 m')).toBe(null);
    expect(reading(['wing', 'span'], '3')).toBe(null);
    expect(reading(['wing', 'span'], '')).toBe(null);
    expect(reading(['no', 'such'], '3 m')).toBe(null);
  });
});
