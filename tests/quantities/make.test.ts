import { describe, expect, it } from 'vitest';
import { assumed, exact, measured, withOrigin } from '../../src/quantities/make.ts';

describe('numbers that nobody wrote', () => {
  it('carry their origin, their uncertainty and no text', () => {
    const density = assumed('density', 930, 20);
    expect(density).toEqual({ kind: 'density', value: 930, u: 20, origin: 'assumed', written: '' });
    expect(exact('number', 2)).toEqual({ kind: 'number', value: 2, u: 0, origin: 'exact', written: '' });
    expect(measured('mass', 0.6, 0.003).origin).toBe('measured');
  });

  it('become another base input when their origin changes', () => {
    const span = measured('length', 3.2, 0.005);
    const inspected = withOrigin(span, 'inspected');
    expect(inspected).not.toBe(span);
    expect(inspected).toEqual({ ...span, origin: 'inspected' });
  });

  it('are finite, with an uncertainty that is not negative', () => {
    expect(() => measured('mass', Number.NaN, 0)).toThrow(RangeError);
    expect(() => measured('mass', 1, -1)).toThrow(RangeError);
    expect(() => assumed('mass', 1, Number.NaN)).toThrow(RangeError);
    expect(() => exact('mass', Infinity)).toThrow(RangeError);
  });
});
