import { describe, expect, it } from 'vitest';
import { todayIn } from '../../src/almanac/today.ts';

// Offsets of the zones: IANA time zone database (Kiritimati +14:00, Pago Pago -11:00, neither with summer time).
describe('todayIn', () => {
  it('is the date of UTC where no zone is given', () => {
    expect(todayIn('2027-03-01T23:59:59Z', null)).toBe('2027-03-01');
  });

  it('is the date at the place, on either side of the date line', () => {
    expect(todayIn('2027-03-01T10:30:00Z', 'Pacific/Kiritimati')).toBe('2027-03-02');
    expect(todayIn('2027-03-01T10:30:00Z', 'Pacific/Pago_Pago')).toBe('2027-02-28');
  });

  it('reads the offset of the instant', () => {
    expect(todayIn('2027-03-01T01:00:00+02:00', null)).toBe('2027-02-28');
  });
});
