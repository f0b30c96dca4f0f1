import { expect, test } from 'vitest';
import { acceptedShape } from '../../../src/entries/describe/accepted-shape.ts';
import type { Field, Shape } from '../../../src/entries/describe/field.ts';

const word: Shape = { kind: 'word', words: ['hand', 'ground'] };
const field: Field = {
  key: 'span',
  title: 'Span',
  description: '',
  example: '',
  required: true,
  shape: word,
};
const map: Shape = { kind: 'map', fields: [field], others: null };

test('what may stand alone or in a list is told once', () => {
  expect(acceptedShape({ kind: 'list', of: word, least: 0, most: 100, orOne: true })).toBe(
    'hand or ground; or a list of such',
  );
});

test('a list says how many it may hold where that is less than any list may', () => {
  expect(acceptedShape({ kind: 'list', of: word, least: 0, most: 12, orOne: false })).toBe(
    'a list of at most 12, each item hand or ground',
  );
  expect(acceptedShape({ kind: 'list', of: map, least: 0, most: 100, orOne: false })).toBe(
    'a list, each item with fields of its own',
  );
});

test('alternatives are told in turn', () => {
  expect(acceptedShape({ kind: 'either', shapes: [word, map] })).toBe('hand or ground; or fields of its own');
});

test('a map with any names says what each holds', () => {
  expect(acceptedShape({ kind: 'map', fields: [], others: { kind: 'number' } })).toBe(
    'any names, each with a number',
  );
});

test('a map open to figures says so', () => {
  expect(acceptedShape({ kind: 'map', fields: [field], others: { kind: 'limit' } })).toBe(
    'fields of its own, and any figure of the model with a limit, such as "at least 2.4 m"',
  );
});
