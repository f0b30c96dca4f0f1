import { describe, expect, it } from 'vitest';
import { seasonFor } from '../../../scripts/new/site/season.ts';

describe('the season of a new club', () => {
  // Counted in a calendar: April to September has 183 days, 14 more are for handing in, 15 for protests and the result.
  it('is April to September of the next year that leaves two months to make it known', () => {
    expect(seasonFor('2026-11-25', {})).toEqual({
      opens: '2027-04-01',
      closes: '2027-09-30',
      reportBy: '2027-10-14',
      final: '2027-10-29',
    });
    expect(seasonFor('2027-01-31', {}).opens).toBe('2027-04-01');
    expect(seasonFor('2027-02-01', {}).opens).toBe('2028-04-01');
  });

  it('ends half a year after the opening that is given', () => {
    expect(seasonFor('2026-11-25', { opens: '2027-10-01' }).closes).toBe('2028-03-31');
  });
});
