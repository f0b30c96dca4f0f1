import { describe, expect, it } from 'vitest';
import { todayIn } from '../../../src/almanac/today.ts';
import { challengeState } from '../../../src/contest/rules/state.ts';

// Offsets of the zones: IANA time zone database. On 31 October 2027 Prague is on standard time again (+01:00 from 01:00
// UTC on), Kiritimati is at +14:00 and Pago Pago at -11:00, both without summer time.

const dated = { opens: '2027-03-01', closes: '2027-10-31' };
const at = (now: string, zone: string | null) => challengeState(dated, todayIn(now, zone), false);

describe('the state of a challenge', () => {
  it('is announced to the end of the day before it opens', () => {
    expect(challengeState(dated, '2027-02-28', false)).toBe('announced');
    expect(challengeState(dated, '2027-03-01', false)).toBe('open');
  });

  it('is open to the end of the closing day in its own zone', () => {
    expect(at('2027-10-31T22:59:59Z', 'Europe/Prague')).toBe('open');
    expect(at('2027-10-31T23:00:00Z', 'Europe/Prague')).toBe('closed');
    expect(at('2027-10-31T09:59:59Z', 'Pacific/Kiritimati')).toBe('open');
    expect(at('2027-10-31T10:00:00Z', 'Pacific/Kiritimati')).toBe('closed');
    expect(at('2027-11-01T10:59:59Z', 'Pacific/Pago_Pago')).toBe('open');
    expect(at('2027-11-01T11:00:00Z', 'Pacific/Pago_Pago')).toBe('closed');
  });

  it('is told by UTC where no zone is given', () => {
    expect(at('2027-10-31T23:59:59Z', null)).toBe('open');
    expect(at('2027-11-01T00:00:00Z', null)).toBe('closed');
  });

  it('opens with the day of its zone, also where UTC is a day behind', () => {
    expect(at('2027-02-28T10:00:00Z', 'Pacific/Kiritimati')).toBe('open');
    expect(at('2027-02-28T10:00:00Z', null)).toBe('announced');
  });

  it('is final once the result is frozen, and only then', () => {
    expect(challengeState(dated, '2027-05-01', true)).toBe('final');
    expect(challengeState(dated, '2037-05-01', false)).toBe('closed');
  });
});
