import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseDate, parseMoment } from '../../src/timing/calendar.ts';
import { dayNumber, instantOf } from '../../src/timing/instant.ts';

describe('a calendar date', () => {
  it.each(['2027-05-09', '2028-02-29', '2000-02-29', ' 2027-12-31 '])('%s is one', (text) => {
    expect(parseDate(text)).toEqual({ ok: true, value: text.trim() });
  });

  // Gregorian calendar: a century is a leap year only where 400 divides it.
  it.each(['2027-02-29', '1900-02-29', '2027-04-31', '2027-13-01', '2027-00-10', '2027-01-00'])(
    '%s is no day',
    (text) => {
      expect(parseDate(text)).toMatchObject({ ok: false, fault: { code: 'impossible-value', found: text } });
    },
  );

  it('says what is wrong in a full sentence', () => {
    expect(parseDate('9 May 2027')).toEqual({
      ok: false,
      fault: {
        code: 'not-a-quantity',
        message:
          '"9 May 2027" is not a date as this format writes it. Write year, month and day with hyphens between them.',
        found: '9 May 2027',
        accepted: 'a calendar date as year-month-day, such as 2027-05-09',
        suggestion: '2027-05-09',
      },
    });
  });

  it.each([
    ['2027/5/9', '2027-05-09'],
    ['18 July 2026', '2026-07-18'],
    ['July 4th, 2026', '2026-07-04'],
    ['3. Sept. 2026', '2026-09-03'],
    ['2027-5-9', '2027-05-09'],
    ['31.12.2027', '2027-12-31'],
    ['12/31/2027', '2027-12-31'],
  ])('%s is refused, and %s offered', (text, suggestion) => {
    expect(parseDate(text)).toMatchObject({ ok: false, fault: { suggestion } });
  });

  it('offers nothing where two days can be meant', () => {
    const parsed = parseDate('05/06/2027');
    expect(parsed.ok || parsed.fault.suggestion).toBeUndefined();
  });
});

describe('a moment', () => {
  it.each([
    ['2027-05-09', null, null],
    ['2027-05-09 18:40', '18:40', null],
    ['2027-05-09 18:40+01:00', '18:40', 60],
    ['2027-05-09T18:40:30-03:30', '18:40:30', -210],
    ['2027-05-09 18:40Z', '18:40', 0],
    ['2027-05-09 18:40 +14:00', '18:40', 840],
  ])('%s has its own calendar date, a time and an offset as far as stated', (text, time, offset) => {
    expect(parseMoment(text)).toEqual({
      ok: true,
      value: { date: '2027-05-09', time, offset, written: text },
    });
  });

  it.each(['2027-05-09 24:00', '2027-05-09 9:40', '2027-05-09 18:60', '2027-05-09 18:40:61', 'yesterday'])(
    '%s is refused',
    (text) => {
      expect(parseMoment(text).ok).toBe(false);
    },
  );

  it.each(['+14:01', '-12:01', '+01:75'])('no place has the offset %s', (offset) => {
    expect(parseMoment(`2027-05-09 18:40${offset}`)).toMatchObject({
      ok: false,
      fault: { code: 'impossible-value' },
    });
  });
});

describe('the instant of a moment', () => {
  it('agrees with the JavaScript engine for any date, time and offset', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1600, max: 2400 }),
        fc.integer({ min: 1, max: 12 }),
        fc.integer({ min: 1, max: 28 }),
        fc.integer({ min: 0, max: 1439 }),
        fc.integer({ min: -48, max: 56 }),
        (year, month, day, minutes, quarters) => {
          const two = (value: number) => String(value).padStart(2, '0');
          const date = `${year}-${two(month)}-${two(day)}`;
          const time = `${two(Math.floor(minutes / 60))}:${two(minutes % 60)}`;
          const offset = quarters * 15;
          const zone = `${offset < 0 ? '-' : '+'}${two(Math.floor(Math.abs(offset) / 60))}:${two(Math.abs(offset) % 60)}`;
          const parsed = parseMoment(`${date} ${time}${zone}`);
          if (!parsed.ok) throw new Error(parsed.fault.message);
          expect(instantOf(parsed.value)).toBe(Date.parse(`${date}T${time}${zone}`) / 1000);
          expect(dayNumber(date)).toBe(Date.parse(`${date}T00:00Z`) / 86_400_000);
        },
      ),
      { seed: 20270509, numRuns: 500 },
    );
  });

  it('is not known without an offset', () => {
    expect(instantOf({ date: '2027-05-09', time: '18:40', offset: null, written: '' })).toBeNull();
    expect(instantOf({ date: '2027-05-09', time: null, offset: null, written: '' })).toBeNull();
  });
});
