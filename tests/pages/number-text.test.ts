import { expect, it } from 'vitest';
import { raisedInText } from '../../src/components/number-text.ts';

it.each([
  ['14.0 g/dm2 then and 13.7 g/dm2 now', '14.0 g/dm² then and 13.7 g/dm² now'],
  ['an area of 52.4 dm2, a section of 20 mm2', 'an area of 52.4 dm², a section of 20 mm²'],
  ['0.93 g/cm3', '0.93 g/cm³'],
])('raises the powers of units behind a number: %s', (text, raised) => {
  expect(raisedInText(text)).toBe(raised);
});

it('leaves names and everything else as people wrote them', () => {
  const text = 'the setup was mk2 then and is 3 skein2 now';
  expect(raisedInText(text)).toBe(text);
});
