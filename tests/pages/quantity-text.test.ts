import { describe, expect, it } from 'vitest';
import { asWritten, measureOfQuantity, watchText } from '../../src/components/quantity-text.ts';
import { type UnitPair, unitPairs } from '../../src/components/units-shown.ts';
import { type ParseOptions, parseQuantity } from '../../src/quantities/parse.ts';
import type { Kind, Quantity } from '../../src/quantities/quantity.ts';

/** As an entry has it, without spaces that do not break. */
function plain(text: string): string {
  return text.replaceAll('\u00a0', ' ');
}

function read(text: string, kind: Kind, options: ParseOptions = {}): Quantity {
  const parsed = parseQuantity(text, kind, options);
  if (!parsed.ok) throw new Error(parsed.fault.message);
  return parsed.value;
}

/** In metric and in imperial units. */
function shown(text: string, kind: Kind, units: UnitPair): [string, string] {
  const { metric, imperial } = asWritten(read(text, kind), units);
  return [plain(metric), plain(imperial)];
}

describe('a value as it was written', () => {
  // 1 ft = 0.3048 m and 1 in = 25.4 mm exactly (international yard and pound agreement, 1959): 60 ft = 18.288 m.
  it('stands in its own system, and converted to three digits in the other', () => {
    expect(shown('60 ft', 'length', unitPairs.height)).toEqual(['18.3 m', '60 ft']);
    expect(shown('300 ft', 'length', unitPairs.height)).toEqual(['91.4 m', '300 ft']);
    expect(shown('20 m', 'length', unitPairs.height)).toEqual(['20 m', '65.6 ft']);
  });

  // 5 ft 9 in = 69 in = 1.7526 m.
  it('stays a compound', () => {
    expect(shown('5 ft 9 in', 'length', unitPairs.height)).toEqual(['1.75 m', '5 ft 9 in']);
  });

  // 1 km/h = 1000/3600 m/s; 1 mi = 1609.344 m exactly: 12 km/h are 3.333 m/s and 7.456 mph.
  it('stays in a unit that neither system shows, in the system it belongs to', () => {
    const [metric, imperial] = shown('12 km/h', 'speed', unitPairs.wind);
    expect(metric).toBe('12 km/h');
    expect(imperial).toMatch(/^7(\.\d+)? mph$/);
  });

  // 1 ozf·in = 7.06155 mN·m (NIST SP 811, appendix B.8): 12 are 84.74 N·mm, known to 2 N·mm.
  it('is converted to no more digits than its ± holds', () => {
    expect(shown('12 in·oz', 'torque', unitPairs.torque)).toEqual(['85 N·mm', '12 ozf·in']);
    expect(shown('12.0 in·oz', 'torque', unitPairs.torque)).toEqual(['84.7 N·mm', '12.0 ozf·in']);
  });

  // 32 °F = 0 °C by definition.
  it('is converted with its zero', () => {
    const [metric, imperial] = shown('32 °F', 'temperature', unitPairs.temperature);
    expect(metric).toMatch(/^0(\.0)? °C$/);
    expect(imperial).toBe('32 °F');
  });

  it('is the same in both where both use its unit', () => {
    expect(shown('0.5°', 'angle', unitPairs.angle)).toEqual(['0.5°', '0.5°']);
    expect(shown('612', 'turns', unitPairs.turns)).toEqual(['612 turns', '612 turns']);
    expect(shown('54 x 10', 'turns', unitPairs.turns)).toEqual([
      '54 × 10 (540 turns)',
      '54 × 10 (540 turns)',
    ]);
  });

  it('is shown in both systems where nobody wrote it', () => {
    const height: Quantity = { kind: 'length', value: 3.048, u: 0.01, origin: 'measured', written: '' };
    const { metric, imperial } = asWritten(height, unitPairs.height);
    expect([plain(metric), plain(imperial)]).toEqual(['3.05 m', '10 ft']);
  });
});

describe('a measured value in a table', () => {
  it('keeps its digits, however large its ±, and is not shown twice in one unit', () => {
    const angle = measureOfQuantity(read('0.25°', 'angle', { floor: 'angle' }), unitPairs.angle);
    expect(angle.metric).toBe('0.25° ± 1.0°');
    expect(angle.metricPlain).toBe('0.25°');
    expect(angle.imperialPlain).toBe(angle.metricPlain);
  });

  it('keeps zeros at its end, also where the point moves', () => {
    expect(plain(measureOfQuantity(read('3.20 m', 'length'), unitPairs.span).metricPlain)).toBe('3.20 m');
    expect(plain(measureOfQuantity(read('320.0 cm', 'length'), unitPairs.span).metricPlain)).toBe('3.200 m');
    expect(plain(measureOfQuantity(read('12,50 cm', 'length'), unitPairs.size).metricPlain)).toBe('125.0 mm');
  });

  it('has the digits written in the system it was written in', () => {
    const span = measureOfQuantity(read('60.0 in', 'length', { floor: 'span' }), unitPairs.span);
    expect(plain(span.imperialPlain)).toBe('60.0 in');
    expect(plain(span.metric)).toMatch(/^1\.5240 ± 0\.0030 m$/);
  });

  it('takes the unit behind the ± for both', () => {
    expect(plain(measureOfQuantity(read('3.20 ± 0.01 m', 'length'), unitPairs.span).metricPlain)).toBe(
      '3.20 m',
    );
  });
});

describe('a reading of a watch', () => {
  it('is shown to the digits written', () => {
    expect(watchText(read('1:35.60', 'time'))).toBe('1:35.60');
    expect(plain(watchText(read('95.60 s', 'time')))).toBe('95.60 s');
  });
});
