import { describe, expect, it } from 'vitest';
import { parseQuantity } from '../../src/quantities/parse.ts';
import type { Kind } from '../../src/quantities/quantity.ts';

function offered(text: string, kind: Kind): string | undefined {
  const read = parseQuantity(text, kind);
  return read.ok ? 'it is read' : read.fault.suggestion;
}

describe('a text that is no quantity', () => {
  it('is offered as the middle of its range, with the uncertainty of a rectangular distribution', () => {
    // JCGM 100:2008, 4.3.7: width / √12. By hand: 3 / 3.464 = 0.866; 2 / 3.464 = 0.577; 20 / 3.464 = 5.77.
    expect(offered('0-3 mph', 'speed')).toBe('1.5 mph ± 0.87 mph');
    expect(offered('12 to 14 °C', 'temperature')).toBe('13 °C ± 0.58 °C');
    expect(offered('500–520', 'turns')).toBe('510 ± 5.8');
    expect(offered('3-0 mph', 'speed')).toBe(undefined);
    expect(offered('0-3 miles', 'speed')).toBe(undefined);
  });

  it('is a fraction of an inch where it has no unit', () => {
    expect(offered('1/8', 'length')).toBe('1/8 in');
    expect(offered('1 1/8', 'length')).toBe('1 1/8 in');
    expect(offered('1/8', 'mass')).toBe(undefined);
  });

  it('is no wind where it is calm', () => {
    // World Meteorological Organization, Beaufort scale: calm is less than one knot.
    expect(offered('Calm', 'speed')).toBe('0 m/s');
    expect(offered('calm', 'length')).toBe(undefined);
  });

  it('is a share whatever it says of what', () => {
    expect(offered('40 % MAC', 'share')).toBe('40 %');
    expect(offered('40% of the chord', 'share')).toBe('40 %');
  });

  it('is offered in the message, too', () => {
    const read = parseQuantity('0-3 mph', 'speed');
    expect(read.ok ? '' : read.fault.message).toBe(
      '"0-3 mph" cannot be read as a speed; write it like "1.5 m/s". Did you mean "1.5 mph ± 0.87 mph"?',
    );
  });
});
