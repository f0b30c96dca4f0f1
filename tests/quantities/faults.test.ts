import { describe, expect, it } from 'vitest';
import { parseCount, parseNumber } from '../../src/quantities/number.ts';
import { parseQuantity } from '../../src/quantities/parse.ts';
import type { Fault, Kind } from '../../src/quantities/quantity.ts';

function faultOf(text: string, kind: Kind): Fault | null {
  const parsed = parseQuantity(text, kind);
  return parsed.ok ? null : parsed.fault;
}

const lengths = 'a length in mm, cm, dm, m, in, ft or yd, such as "3.20 m", "10 ft 6 in" or "3.20 m ± 5 mm"';

describe('the fault', () => {
  it('not-a-quantity', () => {
    expect(faultOf(' three metres ', 'length')).toEqual({
      code: 'not-a-quantity',
      message: '"three metres" cannot be read as a length; write it like "3.20 m".',
      found: 'three metres',
      accepted: lengths,
    });
  });

  it('missing-unit', () => {
    expect(faultOf('3.2', 'length')).toEqual({
      code: 'missing-unit',
      message:
        '"3.2" has no unit; write one of mm, cm, dm, m, in, ft or yd behind the number, such as "3.20 m".',
      found: '3.2',
      accepted: lengths,
    });
  });

  it('impossible-value of a thing that measures nothing', () => {
    const parsed = parseQuantity('0 m', 'length', { floor: 'span' });
    expect(parsed).toMatchObject({
      ok: false,
      fault: { code: 'impossible-value', message: '"0 m" is impossible: a length is above zero here.' },
    });
    expect(parseQuantity('0 g', 'mass', { floor: 'mass' }).ok).toBe(false);
    // A pointed tip, a balance at the leading edge, a level tailplane.
    for (const [kind, floor] of [
      ['length', 'chord'],
      ['length', 'balance'],
      ['angle', 'angle'],
    ] as const)
      expect(parseQuantity(kind === 'angle' ? '0°' : '0 mm', kind, { floor }).ok).toBe(true);
    expect(parseQuantity('0 m', 'length').ok).toBe(true);
  });

  it('unknown-unit of a bare number', () => {
    expect(faultOf('4 times', 'number')?.message).toBe(
      '"4 times" has a unit that is not known, "times": a number is written bare, such as "3.2".',
    );
  });

  it('of an uncertainty in a unit of something else', () => {
    for (const [text, code] of [
      ['3.2 m ± 3 g', 'wrong-kind-of-unit'],
      ['3.2 m ± 3 foo', 'unknown-unit'],
    ] as const)
      expect(faultOf(text, 'length')).toMatchObject({
        code,
        message: `"${text}" has an uncertainty that is not a length; write it like "3.20 m ± 1 %".`,
      });
  });

  it('unknown-unit, with the nearest one', () => {
    expect(faultOf('12 ouncse', 'mass')).toEqual({
      code: 'unknown-unit',
      message:
        '"12 ouncse" has a unit that is not known, "ouncse": a mass is written in mg, g, kg, oz or lb. Did you mean "12 oz"?',
      found: '12 ouncse',
      accepted: 'a mass in mg, g, kg, oz or lb, such as "643 g", "1 lb 7 oz" or "643 g ± 1 g"',
      suggestion: '12 oz',
    });
  });

  it('wrong-kind-of-unit', () => {
    expect(faultOf('87 dm', 'area')).toEqual({
      code: 'wrong-kind-of-unit',
      message:
        '"87 dm" is a length, but an area is written in mm2, cm2, dm2, m2, in2 or ft2. Did you mean "87 dm2"?',
      found: '87 dm',
      accepted: 'an area in mm2, cm2, dm2, m2, in2 or ft2, such as "87.6 dm2" or "9.4 sq ft"',
      suggestion: '87 dm2',
    });
  });

  it('ambiguous-number, with both readings', () => {
    expect(faultOf('1,200 m', 'length')).toEqual({
      code: 'ambiguous-number',
      message: '"1,200 m" can be read in two ways; write "1.200 m" or "1200 m".',
      found: '1,200 m',
      accepted: lengths,
    });
  });

  it('ambiguous-number, with the one reading there is', () => {
    expect(faultOf('1,234.5 g', 'mass')).toMatchObject({
      code: 'ambiguous-number',
      message: '"1,234.5 g" has digits in groups, which can be misread; write "1234.5 g".',
      suggestion: '1234.5 g',
    });
  });

  it('impossible-value', () => {
    expect(faultOf('-3 g', 'mass')).toMatchObject({
      code: 'impossible-value',
      message: '"-3 g" is impossible: a mass cannot be negative here.',
      found: '-3 g',
    });
  });

  it.each<[string, Kind, string]>([
    ['m', 'length', '"m" is a unit without a number; write a length like "3.20 m".'],
    ['1e309 m', 'length', '"1e309 m" is impossible: it is not a number that can be reckoned with.'],
    ['1/0 m', 'length', '"1/0 m" is impossible: it divides by zero.'],
    ['-300 °C', 'temperature', '"-300 °C" is impossible: nothing is colder than absolute zero, -273.15 °C.'],
    ['9:94', 'time', '"9:94" is impossible: the seconds after a colon go from 00 to 59.'],
    [
      '8:000',
      'time',
      '"8:000" cannot be read as minutes and seconds; write two digits after the colon, such as "2:05.4".',
    ],
    [
      "5'3",
      'length',
      '"5\'3" ends in a number without a unit; write one of mm, cm, dm, m, in, ft or yd behind it.',
    ],
    [
      '10 ft 14 in',
      'length',
      '"10 ft 14 in" cannot be read as a length: in a compound whole numbers come first, and each part is smaller than one of the unit before it, as in "10 ft 6 in".',
    ],
    [
      '62',
      'share',
      '"62" is a share above one, so a unit may be missing; write a share like "38 %" or "0.38". Did you mean "62 %"?',
    ],
    ['640 m', 'turns', '"640 m" is a length, but a number of turns is written bare, such as "640".'],
    [
      '3.20 m ± 0.01',
      'length',
      '"3.20 m ± 0.01" has no unit behind the uncertainty; write it like "3.20 m ± 1 %".',
    ],
    [
      '3.20 m ± x',
      'length',
      '"3.20 m ± x" has an uncertainty that cannot be read; write it like "3.20 m ± 1 %".',
    ],
    ['3.20 m ± -5 mm', 'length', '"3.20 m ± -5 mm" is impossible: an uncertainty cannot be negative.'],
    [
      '45 % ± 1',
      'share',
      '"45 % ± 1" has no unit behind the uncertainty; write it like "38 % ± 1 %". Did you mean "45 % ± 1 %"?',
    ],
    [
      '14 °C ± 1 %',
      'temperature',
      '"14 °C ± 1 %" gives the uncertainty of a temperature in per cent, which means nothing; write it in degrees, such as "14 °C ± 1 °C".',
    ],
    ['x'.repeat(201), 'mass', `"${'x'.repeat(60)}…" is too long for a mass; write it like "643 g".`],
  ])('%s as a %s says so in a sentence', (text, kind, message) => {
    expect(faultOf(text, kind)?.message).toBe(message);
  });

  it('shows no character that would turn or break the line it is printed on', () => {
    const fault = faultOf('3 m\u202e\n\u0007x', 'length');
    expect(fault?.found).toBe('3 m\uFFFD\uFFFD\uFFFDx');
    expect(fault?.message).not.toMatch(/\p{C}/u);
  });

  it('offers no unit a thousand times away', () => {
    expect(faultOf('3 km', 'length')?.suggestion).toBeUndefined();
    expect(faultOf('3 MM', 'length')?.suggestion).toBe('3 mm');
    expect(faultOf('8 MN·m', 'torque')?.suggestion).toBe('8 mN·m');
    expect(faultOf('8 oz', 'torque')?.suggestion).toBe('8 ozf·in');
    expect(faultOf('5 N', 'torque')?.suggestion).toBeUndefined();
  });
});

describe('parseCount', () => {
  it('takes whole numbers from zero on', () => {
    expect(parseCount('10')).toEqual({ ok: true, value: 10 });
    expect(parseCount(' 0 ')).toEqual({ ok: true, value: 0 });
  });

  it.each([
    ['2.5', 'impossible-value'],
    ['2.0', 'impossible-value'],
    ['-2', 'impossible-value'],
    ['1e3', 'impossible-value'],
    ['99999999999999999999', 'impossible-value'],
    ['1/2', 'impossible-value'],
    ['1,200', 'ambiguous-number'],
    ['ten', 'not-a-quantity'],
    ['10 strands', 'not-a-quantity'],
    ['', 'not-a-quantity'],
    ['9'.repeat(400), 'not-a-quantity'],
  ])('refuses %s: %s', (text, code) => {
    const parsed = parseCount(text);
    expect(parsed.ok ? null : parsed.fault.code).toBe(code);
  });

  it('says so in a sentence', () => {
    expect(parseCount('2.5')).toEqual({
      ok: false,
      fault: {
        code: 'impossible-value',
        message: '"2.5" is impossible here: a count is a whole number, zero or more, such as "2".',
        found: '2.5',
        accepted: 'a whole number, such as "2"',
      },
    });
    const parsed = parseCount('ten');
    expect(parsed.ok ? '' : parsed.fault.message).toBe(
      '"ten" cannot be read as a whole number; write it like "2".',
    );
  });
});

describe('parseNumber', () => {
  it('gives the step of the last digit, and none for a fraction', () => {
    expect(parseNumber('3,20')).toEqual({ ok: true, value: { value: 3.2, step: 0.01 } });
    expect(parseNumber('-12')).toEqual({ ok: true, value: { value: -12, step: 1 } });
    expect(parseNumber('3 1/8')).toEqual({ ok: true, value: { value: 3.125, step: null } });
  });

  it('refuses what is no bare number', () => {
    for (const text of ['', '3 m', 'x', '1,200', '1e999', 'NaN']) expect(parseNumber(text).ok).toBe(false);
  });
});
