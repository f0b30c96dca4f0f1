import { describe, expect, it } from 'vitest';
import { withNamesToldApart } from '../../src/compare/names-told-apart.ts';

const aircraft = (id: string, name: string, title: string) => ({
  id,
  name,
  challenge: { id: id.split('/')[0] ?? '', title },
});
const namesOf = (...all: ReturnType<typeof aircraft>[]) => withNamesToldApart(all).map(({ name }) => name);

describe('names of aircraft side by side', () => {
  const heron = aircraft('spring/heron', 'Heron', 'Spring Trial');

  it('stay as they are where they differ', () => {
    expect(namesOf(heron, aircraft('spring/plover', 'Plover', 'Spring Trial'))).toEqual(['Heron', 'Plover']);
  });

  it('take the challenge with them where one aircraft flew in two', () => {
    expect(namesOf(heron, aircraft('autumn/heron', 'Heron', 'Autumn Trial'))).toEqual([
      'Heron, Spring Trial',
      'Heron, Autumn Trial',
    ]);
  });

  it('take the id with them where the challenge is the same, too', () => {
    const other = aircraft('spring/heron-two', 'Heron', 'Spring Trial');
    expect(namesOf(heron, other)).toEqual(['Heron, spring/heron', 'Heron, spring/heron-two']);
  });
});
