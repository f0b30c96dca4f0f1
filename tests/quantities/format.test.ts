import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatMeasured, formatSeconds, toUnit } from '../../src/quantities/format.ts';
import { formatQuantity } from '../../src/quantities/format-quantity.ts';
import { parseQuantity } from '../../src/quantities/parse.ts';
import type { Unit } from '../../src/quantities/units.ts';
import { units } from '../../src/quantities/units.ts';

function siValue(text: string, unit: Unit): number {
  const parsed = parseQuantity(text, unit.kind, { negative: true });
  if (!parsed.ok) throw new Error(parsed.fault.message);
  return parsed.value.value;
}

/** Many magnitudes, whole numbers and decimals of up to eight digits, as people write them. */
const written = fc
  .tuple(fc.integer({ min: 1, max: 99_999_999 }), fc.integer({ min: -12, max: 9 }))
  .map(([digits, power]) => ({ text: `${digits}e${power}`, value: Number(`${digits}e${power}`) }));

describe('parse → format → parse', () => {
  it.each(units.map((unit) => [`${unit.kind} in ${unit.symbol}`, unit] as const))(
    '%s gives the value back',
    (_, unit) => {
      fc.assert(
        fc.property(written, fc.boolean(), ({ text, value: number }, below) => {
          // A bare share above one is refused on purpose, and nothing lies below absolute zero.
          fc.pre(!(unit.kind === 'share' && unit.symbol === '1' && number > 1));
          const sign = below && unit.kind !== 'temperature' ? '-' : '';
          const value = siValue(`${sign}${text} ${unit.symbol === '1' ? '' : unit.symbol}`, unit);
          expect(siValue(formatQuantity(value, unit.kind, unit.symbol), unit)).toBe(value);
        }),
        { seed: 31, numRuns: 300 },
      );
    },
  );

  it('also from values that were written in another unit, to 14 digits', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-9, max: 1e9, noNaN: true }),
        fc.constantFrom(...units),
        (value, unit) => {
          const back = siValue(formatQuantity(value, unit.kind, unit.symbol), unit);
          expect(Math.abs(back - value)).toBeLessThanOrEqual(
            Math.max(Math.abs(value), unit.offset ?? 0) * 1e-14,
          );
        },
      ),
      { seed: 32, numRuns: 3000 },
    );
  });
});

describe('formatQuantity', () => {
  // 1 ft = 0.3048 m, 1 lb = 0.45359237 kg (yard and pound agreement, 1959); 0 °C = 273.15 K.
  it.each([
    [3.2, 'length', 'm', '3.2 m'],
    [3.2, 'length', 'mm', '3200 mm'],
    [3.2004, 'length', 'ft', '10.5 ft'],
    [0.3048, 'length', 'in', '12 in'],
    [0.45359237, 'mass', 'oz', '16 oz'],
    [287.15, 'temperature', '°C', '14 °C'],
    [Math.PI / 60, 'angle', '°', '3°'],
    [0.38, 'share', '%', '38 %'],
    [0.38, 'share', '1', '0.38'],
    [1.2, 'share', '1', '120 %'],
    [540, 'turns', 'turns', '540 turns'],
    [0.061, 'torque', 'mN·m', '61 mN·m'],
    [0.061, 'torque', 'N.m', '0.061 N·m'],
    [-0, 'length', 'm', '0 m'],
    [3.2, 'number', '1', '3.2'],
    [1e-7, 'length', 'm', '1e-7 m'],
  ] as const)('%d %s in %s is "%s"', (value, kind, symbol, text) => {
    expect(formatQuantity(value, kind, symbol)).toBe(text);
  });

  it('refuses what is not finite, and units of another kind', () => {
    expect(() => formatQuantity(Number.NaN, 'length', 'm')).toThrow(RangeError);
    expect(() => formatQuantity(Infinity, 'length', 'm')).toThrow(RangeError);
    expect(() => formatQuantity(1, 'length', 'kg')).toThrow(RangeError);
  });
});

describe('toUnit', () => {
  it('shifts decimals without a last bit', () => {
    expect(toUnit(3.2, 'length', 'mm')).toBe(3200);
    expect(toUnit(0.0417, 'length', 'mm')).toBe(41.7);
    expect(toUnit(1e-7, 'length', 'mm')).toBe(1e-4);
    expect(toUnit(0.3048, 'length', 'ft')).toBe(1);
  });
});

// u to two significant digits and the value to the same place: JCGM 100:2008, 7.2.6.
describe('formatMeasured', () => {
  it.each([
    [3.2, 0.005, 'length', 'm', '3.2000', '0.0050', 'm'],
    [3.2, 0.005, 'length', 'mm', '3200.0', '5.0', 'mm'],
    [0.643, 0.0032, 'mass', 'g', '643.0', '3.2', 'g'],
    [643.4, 12.3, 'number', '1', '643', '12', ''],
    [3245, 123, 'number', '1', '3250', '120', ''],
    [3.2, 0.0996, 'length', 'm', '3.20', '0.10', 'm'],
    [3.2, 0.00996, 'length', 'm', '3.200', '0.010', 'm'],
    [287.15, 1, 'temperature', '°C', '14.0', '1.0', '°C'],
    [-0.00001, 0.01, 'length', 'm', '0.000', '0.010', 'm'],
    [3.2, 0, 'length', 'm', '3.2', '', 'm'],
    [0.38, 0.01, 'share', '%', '38.0', '1.0', '%'],
    // JCGM 100:2008, 7.2.2: 100.02147 g with u 0.35 mg is written 100.02147(35) g.
    [0.10002147, 3.5e-7, 'mass', 'g', '100.02147', '0.00035', 'g'],
  ] as const)('%d ± %d %s in %s', (value, u, kind, symbol, shownValue, shownU, unit) => {
    expect(formatMeasured(value, u, kind, symbol)).toEqual({ value: shownValue, u: shownU, unit });
  });

  it('shows at least two digits of u and the value to the same place, at every magnitude', () => {
    const magnitude = fc.double({ min: 1e-9, max: 1e9, noNaN: true });
    fc.assert(
      fc.property(magnitude, magnitude, (value, u) => {
        const shown = formatMeasured(value, u, 'length', 'm');
        const places = (text: string) => text.split('.')[1]?.length ?? 0;
        expect(places(shown.value)).toBe(places(shown.u));
        expect(Math.abs(Number(shown.u) - u) / u).toBeLessThan(0.051);
        expect(Math.abs(Number(shown.value) - value)).toBeLessThanOrEqual(0.051 * u + value * 1e-15);
      }),
      { seed: 33, numRuns: 2000 },
    );
  });
});

describe('formatSeconds', () => {
  it('has the decimals of the resolution', () => {
    expect(formatSeconds(41.7, '0.1')).toBe('41.7 s');
    expect(formatSeconds(41, '0.01')).toBe('41.00 s');
    expect(formatSeconds(101, '1')).toBe('101 s');
    expect(formatSeconds(183.4, '0.2')).toBe('183.4 s');
  });
});
