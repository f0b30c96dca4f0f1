import { describe, expect, it } from 'vitest';
import { plainReadings } from '../../src/components/plain-readings.ts';
import { floors } from '../../src/quantities/floors.ts';

describe('the table of plain readings', () => {
  const byName = new Map(plainReadings().map(({ what, least }) => [what, least.replaceAll('\u00a0', ' ')]));

  it('has a line for everything that has a least ±', () => {
    // Masses, whose least ± hangs on the balance, come on top.
    expect(byName.size).toBe(Object.keys(floors).length + 1);
  });

  // The least values of the project's own description of figures (common practice, no source).
  it('tells shares and absolute values', () => {
    expect(byName.get('Span')).toBe('0.2 % of it');
    expect(byName.get('Angles')).toBe('1°');
    expect(byName.get('Balance, from the leading edge')).toBe('2 mm');
    expect(byName.get('Masses')).toBe(
      'the larger of 0.5 % of it and 0.1 g; 0.01 g where hundredths of a gram were written',
    );
  });
});
