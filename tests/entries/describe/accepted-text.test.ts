import { expect, test } from 'vitest';
import { acceptedText } from '../../../src/entries/describe/accepted-text.ts';

test('a quantity is told with its units and examples', () => {
  expect(acceptedText({ kind: 'quantity', of: 'speed', negative: false })).toBe(
    'a speed in m/s, km/h, mph, kn or ft/s, such as "1.5 m/s" or "5 km/h"',
  );
});

test('words are listed', () => {
  expect(acceptedText({ kind: 'word', words: ['hand', 'ground', 'water'] })).toBe('hand, ground or water');
});

test('a date that may carry the time of day says how', () => {
  expect(acceptedText({ kind: 'date', precision: 'moment' })).toContain('2027-05-09 18:40+01:00');
});
