import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseMoment } from '../../src/timing/calendar.ts';
import { momentText } from '../../src/timing/moment-text.ts';

describe('a moment as text', () => {
  it.each([
    ['2027-05-09', null, null, '2027-05-09'],
    ['2027-05-09', '18:40', null, '2027-05-09 18:40'],
    ['2027-05-09', '18:40:05', 60, '2027-05-09 18:40:05+01:00'],
    ['2027-05-09', '18:40', -210, '2027-05-09 18:40-03:30'],
    ['2027-05-09', '18:40', 0, '2027-05-09 18:40+00:00'],
  ])('of %s %s, %s minutes east, is what the format takes', (date, time, offset, text) => {
    expect(momentText({ date, time, offset, written: '' })).toBe(text);
  });

  it('is read back as the same moment', () => {
    const offsets = fc.option(fc.integer({ min: -720, max: 840 }));
    fc.assert(
      fc.property(offsets, (offset) => {
        const text = momentText({ date: '2027-05-09', time: '07:05', offset, written: '' });
        expect(parseMoment(text)).toMatchObject({ ok: true, value: { time: '07:05', offset } });
      }),
      { seed: 5 },
    );
  });
});
