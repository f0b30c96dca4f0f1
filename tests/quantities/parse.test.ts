import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type ParseOptions, parseQuantity } from '../../src/quantities/parse.ts';
import type { Kind } from '../../src/quantities/quantity.ts';
import { kinds } from './kinds.ts';

/** The SI value, or the code of the fault. */
function read(text: string, kind: Kind, options?: ParseOptions): number | string {
  const parsed = parseQuantity(text, kind, options);
  return parsed.ok ? parsed.value.value : parsed.fault.code;
}

// Values below are worked by hand from: 1 in = 0.0254 m, 1 lb = 0.45359237 kg (1959), g = 9.80665 m/s² (1901).

describe('lengths', () => {
  it.each([
    ['3.20 m', 3.2],
    ['320 cm', 3.2],
    ['3200mm', 3.2],
    ['10 ft 6 in', 3.2004],
    [`10' 6"`, 3.2004],
    [`10'6"`, 3.2004],
    [`10'-6"`, 3.2004],
    [`10' 6''`, 3.2004],
    ['10′ 6″', 3.2004],
    ['10’ 6”', 3.2004],
    ['10ft6in', 3.2004],
    ['10 ft, 6 in', 3.2004],
    ['10 ft. 6 in.', 3.2004],
    ['10 feet 6 inches', 3.2004],
    ['3 yd 1 ft 6 in', 3.2004],
    ['1 m 20 cm', 1.2],
    ['10 FT', 3.048],
    ['3-inch', 0.0762],
    ['0 m', 0],
  ])('%s', (text, metres) => {
    expect(read(text, 'length')).toBeCloseTo(metres, 14);
  });

  it('are the very same number in millimetres, centimetres and metres', () => {
    expect(read('104 mm', 'length')).toBe(0.104);
    expect(read('41.7 mm', 'length')).toBe(0.0417);
    expect(read('320 cm', 'length')).toBe(read('3.20 m', 'length'));
    expect(read('6 in', 'length')).toBe(0.1524);
    expect(read('1 ft', 'length')).toBe(read('12 in', 'length'));
  });

  it('may be negative only where that makes sense', () => {
    expect(read('-40 mm', 'length')).toBe('impossible-value');
    expect(read('-40 mm', 'length', { negative: true })).toBe(-0.04);
    expect(read('−40 mm', 'length', { negative: true })).toBe(-0.04);
    expect(read('–40 mm', 'length', { floor: 'balance' })).toBe(-0.04);
    expect(read('-0 mm', 'length')).toBe(0);
  });

  it('a minus before a compound is that of the whole', () => {
    expect(read('-1 ft 2 in', 'length', { negative: true })).toBeCloseTo(-14 * 0.0254, 14);
    expect(read('-0 ft 2 in', 'length', { negative: true })).toBeCloseTo(-2 * 0.0254, 14);
  });
});

describe('the forms of a number', () => {
  it.each([
    ['3.2', 3.2],
    ['3,2', 3.2],
    ['.5', 0.5],
    ['0,410', 0.41],
    ['1234,500', 1234.5],
    ['1,2000', 1.2],
    ['1.200', 1.2],
    ['1/8', 0.125],
    ['3 1/8', 3.125],
    ['3-1/8', 3.125],
    ['-3 1/8', -3.125],
    ['½', 0.5],
    ['3⅛', 3.125],
    ['3 ⅛', 3.125],
    ['3-⅛', 3.125],
    ['1⁄8', 0.125],
    ['+2', 2],
    ['1e-3', 0.001],
    ['1.5E3', 1500],
    ['5 %', 0.05],
    ['\u00a03.2\u2009', 3.2],
  ])('%s', (text, value) => {
    expect(read(text, 'number')).toBe(value);
  });

  it.each([
    ['1,200', 'ambiguous-number'],
    ['125,000', 'ambiguous-number'],
    ['1,234.5', 'ambiguous-number'],
    ['1.234,5', 'ambiguous-number'],
    ['1,234,567', 'ambiguous-number'],
    ['1.234.567', 'ambiguous-number'],
    ['1 200', 'ambiguous-number'],
    ['1\u202f200', 'ambiguous-number'],
    ['1.2.3', 'not-a-quantity'],
    ['5.', 'not-a-quantity'],
    ['3 9/8', 'not-a-quantity'],
    ['1.5/8', 'not-a-quantity'],
    ['1/2/3', 'not-a-quantity'],
    ['10²', 'not-a-quantity'],
    ['3 - 1/8', 'not-a-quantity'],
    ['10 6', 'not-a-quantity'],
    ['--3', 'not-a-quantity'],
    ['3 to 4', 'not-a-quantity'],
    ['3 pieces', 'unknown-unit'],
    ['three', 'not-a-quantity'],
    ['', 'not-a-quantity'],
    ['1/0', 'impossible-value'],
    ['1e309', 'impossible-value'],
    ['1e-400', 'impossible-value'],
    ['NaN', 'impossible-value'],
    ['.nan', 'impossible-value'],
    ['Infinity', 'impossible-value'],
    ['-.inf', 'impossible-value'],
    ['∞', 'impossible-value'],
  ])('refuses %j: %s', (text, code) => {
    expect(read(text, 'number')).toBe(code);
  });
});

describe('masses, forces and torques', () => {
  it.each<[string, Kind, number]>([
    ['643 g', 'mass', 0.643],
    ['42,5 g', 'mass', 0.0425],
    ['1.2 Kg', 'mass', 1.2],
    ['2 lb 3 oz', 'mass', (35 * 0.45359237) / 16],
    ['2 lbs, 3 oz', 'mass', (35 * 0.45359237) / 16],
    ['65 g', 'force', 0.065 * 9.80665],
    ['65 gf', 'force', 0.065 * 9.80665],
    ['2 lb 3 oz', 'force', ((35 * 0.45359237) / 16) * 9.80665],
    ['1 kg', 'force', 9.80665],
    ['650 mN', 'force', 0.65],
    ['61 mN·m', 'torque', 0.061],
    ['61 mN⋅m', 'torque', 0.061],
    ['61 mN*m', 'torque', 0.061],
    ['61 mN m', 'torque', 0.061],
    ['61 mN-m', 'torque', 0.061],
    ['61 mNm', 'torque', 0.061],
    ['61 N·mm', 'torque', 0.061],
    ['0.061 N.m', 'torque', 0.061],
    ['6.1 cN·m', 'torque', 0.061],
    ['80 g·cm', 'torque', 80 * 9.80665e-5],
    ['80 gf·cm', 'torque', 80 * 9.80665e-5],
    ['8 ozf·in', 'torque', 8 * 7.061551814226e-3],
    ['8 oz·in', 'torque', 8 * 7.061551814226e-3],
    ['8 in·oz', 'torque', 8 * 7.061551814226e-3],
    ['8 in-oz', 'torque', 8 * 7.061551814226e-3],
    ['8 in oz', 'torque', 8 * 7.061551814226e-3],
    ['8 inch ounces', 'torque', 8 * 7.061551814226e-3],
    ['1 ft-lb', 'torque', 4.4482216152605 * 0.3048],
    ['1 lbf in', 'torque', 4.4482216152605 * 0.0254],
  ])('%s as a %s', (text, kind, value) => {
    expect(read(text, kind)).toBeCloseTo(value, 13);
  });

  it('an ounce is a mass or a force as the field asks, never a torque; a meganewton is no millinewton', () => {
    expect(read('8 oz', 'torque')).toBe('wrong-kind-of-unit');
    expect(read('8 oz·in', 'mass')).toBe('wrong-kind-of-unit');
    expect(read('8 MN·m', 'torque')).toBe('unknown-unit');
  });
});

describe('times', () => {
  it.each([
    ['41.62 s', 41.62],
    ['2:05', 125],
    ['2:05.4', 125.4],
    ['2:05,4', 125.4],
    ['1:02.4', 62.4],
    ['28:20', 1700],
    ['0:45', 45],
    ['75:00', 4500],
    ['1 min 2.4 s', 62.4],
    ['1 min 12,4 s', 72.4],
    ['500 ms', 0.5],
    ['14 days', 1_209_600],
    ['2 h', 7200],
  ])('%s', (text, seconds) => {
    expect(read(text, 'time')).toBe(seconds);
  });

  it.each([
    // Misprints of published results.
    ['9:94', 'impossible-value'],
    ['8:000', 'not-a-quantity'],
    ['2:5', 'not-a-quantity'],
    ['1:02:03', 'not-a-quantity'],
    [':45', 'not-a-quantity'],
    ['2:05 s', 'not-a-quantity'],
    ['-0:45', 'impossible-value'],
    ['1 min 75 s', 'not-a-quantity'],
    ['1.5 min 3 s', 'not-a-quantity'],
    ['45', 'missing-unit'],
  ])('refuses %s: %s', (text, code) => {
    expect(read(text, 'time')).toBe(code);
  });
});

describe('other kinds', () => {
  it.each<[string, Kind, number]>([
    ['87.6 dm²', 'area', 0.876],
    ['87.6 dm^2', 'area', 0.876],
    ['9.4 sq ft', 'area', 9.4 * 0.3048 ** 2],
    ['9.4 sq. ft.', 'area', 9.4 * 0.3048 ** 2],
    ['9.4 square feet', 'area', 9.4 * 0.3048 ** 2],
    ['100 sq in', 'area', 0.064516],
    ['36 km/h', 'speed', 10],
    ['1 mph', 'speed', 0.44704],
    ['3°', 'angle', Math.PI / 60],
    ['3º', 'angle', Math.PI / 60],
    ['-3 deg', 'angle', -Math.PI / 60],
    ['14 °C', 'temperature', 287.15],
    ['14°C', 'temperature', 287.15],
    ['14 ℃', 'temperature', 287.15],
    ['-40 °C', 'temperature', 233.15],
    ['-40 °F', 'temperature', 233.15],
    ['59 °F', 'temperature', 288.15],
    ['-273.15 °C', 'temperature', 0],
    ['-459.67 °F', 'temperature', 0],
    ['1014 hPa', 'pressure', 101_400],
    ['1014 mbar', 'pressure', 101_400],
    ['12 J/g', 'specific-energy', 12_000],
    ['1 ft·lbf/lb', 'specific-energy', 2.98906692],
    ['1 ft-lb/lb', 'specific-energy', 2.98906692],
    ['73 g/dm2', 'loading', 0.073 * 9.80665 * 100],
    ['73 gf/dm²', 'loading', 0.073 * 9.80665 * 100],
    ['2 kg/m2', 'loading', 2 * 9.80665],
    ['7.2 N/m²', 'loading', 7.2],
    ['1 oz/ft²', 'loading', 0.305151727274 * 9.80665],
    ['1 oz / sq. ft', 'loading', 0.305151727274 * 9.80665],
    ['0.93 g/cm³', 'density', 930],
    ['38 %', 'share', 0.38],
    ['38%', 'share', 0.38],
    ['0.38', 'share', 0.38],
    ['640', 'turns', 640],
    ['640 turns', 'turns', 640],
    ['54 x 10', 'turns', 540],
    ['54×10', 'turns', 540],
    ['54 X 10', 'turns', 540],
    ['54,5 x 10', 'turns', 545],
    ['8.924 N.s', 'impulse', 8.924],
    ['0.8 g/mm', 'mass-per-length', 0.8],
    ['1.4 s/g', 'time-per-mass', 1400],
  ])('%s as a %s', (text, kind, value) => {
    expect(read(text, kind)).toBeCloseTo(value, 11);
  });

  it.each<[string, Kind, string]>([
    ['-274 °C', 'temperature', 'impossible-value'],
    ['-1 K', 'temperature', 'impossible-value'],
    ['-3 g', 'mass', 'impossible-value'],
    ['-640', 'turns', 'impossible-value'],
    ['62', 'share', 'missing-unit'],
    ['54 x', 'turns', 'not-a-quantity'],
    ['5 x 4 x 3', 'turns', 'not-a-quantity'],
    ['54 x 1,000', 'turns', 'ambiguous-number'],
    ['640 m', 'turns', 'wrong-kind-of-unit'],
    ['87 dm', 'area', 'wrong-kind-of-unit'],
    ['3 m2', 'length', 'wrong-kind-of-unit'],
    ["5'3", 'length', 'missing-unit'],
    ["1'200 mm", 'length', 'not-a-quantity'],
    ['10 ft 14 in', 'length', 'not-a-quantity'],
    ['6 in 10 ft', 'length', 'not-a-quantity'],
    ['10.5 ft 6 in', 'length', 'not-a-quantity'],
    ['10 ft -6 in', 'length', 'not-a-quantity'],
    ['10 ft .5 in', 'length', 'not-a-quantity'],
    ['2 lb 3 g', 'mass', 'not-a-quantity'],
    ['5-3 mm', 'length', 'not-a-quantity'],
  ])('refuses %s as a %s: %s', (text, kind, code) => {
    expect(read(text, kind)).toBe(code);
  });
});

describe('any text at all', () => {
  it('gives a finite value with a finite uncertainty, or a fault, and keeps what was written', () => {
    const bits = fc.constantFrom(
      '1',
      '25',
      '0',
      '.',
      ',',
      '-',
      '±',
      '+/-',
      '/',
      ':',
      ' ',
      'e',
      'm',
      'ft',
      "'",
      '"',
      'in',
      'g',
      'oz',
      'lb',
      '·',
      's',
      'min',
      '%',
      '°',
      'C',
      'x',
      '½',
      '²',
      '−',
      'N',
      '1e309',
      '1e-320',
      'NaN',
    );
    const texts = fc.oneof(
      fc.array(bits, { maxLength: 12 }).map((parts) => parts.join('')),
      fc.string({ unit: 'binary' }),
    );
    fc.assert(
      fc.property(texts, fc.constantFrom(...kinds), (text, kind) => {
        const parsed = parseQuantity(text, kind, { floor: kind === 'mass' ? 'mass' : undefined });
        if (!parsed.ok) {
          expect(parsed.fault.message).toMatch(/[.?]$/);
          expect(parsed.fault.accepted).not.toBe('');
          return;
        }
        expect(Number.isFinite(parsed.value.value)).toBe(true);
        expect(parsed.value.u).toBeGreaterThanOrEqual(0);
        expect(Number.isFinite(parsed.value.u)).toBe(true);
        expect(parsed.value.written).toBe(text.trim());
      }),
      { seed: 21, numRuns: 20_000 },
    );
  });

  it('offers only suggestions that would be accepted', () => {
    const units = fc.constantFrom(
      'mmm',
      'MM',
      'inchs',
      'ouncse',
      'oz',
      'm',
      'N',
      'grms',
      'dm',
      'kgs',
      'ftt',
      'secnds',
      'MN·m',
      '',
    );
    const numbers = fc.constantFrom('3', '-3', '1,234.5', '1 200', '62', '38 ± 1 %', '45 % ± 1', '3/4');
    let offered = 0;
    fc.assert(
      fc.property(numbers, units, fc.constantFrom(...kinds), (number, unit, kind) => {
        const parsed = parseQuantity(`${number} ${unit}`, kind);
        if (parsed.ok || parsed.fault.suggestion === undefined) return;
        offered += 1;
        expect(parseQuantity(parsed.fault.suggestion, kind).ok).toBe(true);
      }),
      { seed: 22, numRuns: 5000 },
    );
    expect(offered).toBeGreaterThan(100);
  });

  it('is read in time in proportion to its length: long ones are refused at once', () => {
    const hard = [
      '1 '.repeat(100),
      `${'1'.repeat(199)}x`,
      ' '.repeat(200),
      '1/'.repeat(100),
      '-'.repeat(200),
      'm '.repeat(100),
      '1 m'.repeat(66),
    ];
    const started = process.cpuUsage().user;
    for (const text of [...hard, ...hard.map((text) => text.repeat(50_000))]) {
      for (const kind of kinds) expect(parseQuantity(text, kind).ok).toBe(false);
    }
    // Microseconds; a quadratic reader of ten million characters would need hours.
    expect(process.cpuUsage().user - started).toBeLessThan(3_000_000);
  });
});
