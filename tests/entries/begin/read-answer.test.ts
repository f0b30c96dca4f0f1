import { describe, expect, it } from 'vitest';
import { setNamed } from '../../../src/entries/begin/beginning.ts';
import { fieldNamed } from '../../../src/entries/begin/field-named.ts';
import { nextNumber } from '../../../src/entries/begin/next-number.ts';
import { readAnswer } from '../../../src/entries/begin/read-answer.ts';
import { describeShape } from '../../../src/entries/describe/describe-shape.ts';
import { challenge } from '../../../src/entries/schema/challenge.ts';
import { entry } from '../../../src/entries/schema/entry.ts';

// Expected values are what YAML 1.2 makes of the same text in a file, written out by hand.
const shape = describeShape(entry);
function read(name: string, typed: string) {
  const found = fieldNamed(shape, name);
  if (!found.ok) throw new Error(found.message);
  return readAnswer(found.named.shape, typed);
}
const path = (name: string) => {
  const found = fieldNamed(shape, name);
  return found.ok ? found.named.path : found.message;
};

describe('what is typed for a field', () => {
  it('is its text, without the spaces around it', () => {
    expect(read('name', ' Slow Lantern ')).toBe('Slow Lantern');
    expect(read('flights.note', 'Late: # no')).toBe('Late: # no');
  });

  it('is a text with brackets where the field takes no list', () => {
    expect(read('name', '[sic] the Moth')).toBe('[sic] the Moth');
    expect(read('flights.note', '{not a map}')).toBe('{not a map}');
  });

  it('may stand in double quotes', () => {
    expect(read('name', '"Moth, the"')).toBe('Moth, the');
  });

  it('is a map or a list in braces or brackets', () => {
    expect(read('builder', '{ handle: pip, name: Pip A. }')).toEqual({ handle: 'pip', name: 'Pip A.' });
    expect(read('motors', '[{ count: 2 }]')).toEqual([{ count: '2' }]);
    expect(read('motors.propeller.pitch', '{ angle: 28°, at: 110 mm }')).toEqual({
      angle: '28°',
      at: '110 mm',
    });
  });

  it('is a list with commas, decimal ones apart', () => {
    expect(read('flights.watches', '41.6 s, 41.8 s')).toEqual(['41.6 s', '41.8 s']);
    expect(read('flights.watches', '41,6 s, 41,8 s')).toEqual(['41,6 s', '41,8 s']);
    expect(read('flights.watches', '41,6s,41,8s')).toEqual(['41,6s', '41,8s']);
    expect(read('flights.watches', '41.6 s')).toEqual(['41.6 s']);
    expect(read('flights.timekeepers', 'otter,heron')).toEqual(['otter', 'heron']);
    expect(read('flights.timekeepers', 'otter')).toBe('otter');
  });

  it('keeps the commas of addresses', () => {
    expect(read('flights.evidence', 'https://video.example/a,b')).toBe('https://video.example/a,b');
    expect(read('flights.evidence', 'https://video.example/1,https://video.example/2,3')).toEqual([
      'https://video.example/1',
      'https://video.example/2,3',
    ]);
  });

  it('never becomes more than its field', () => {
    expect(read('builder', '{ handle: pip }\nname: x')).toBe('{ handle: pip }\nname: x');
  });
});

describe('the name of a field', () => {
  it('goes through lists with or without a number, counted from 1', () => {
    expect(path('motors.skein.strands')).toEqual(['motors', 0, 'skein', 'strands']);
    expect(path('motors.2.count')).toEqual(['motors', 1, 'count']);
    expect(path('builder.handle')).toEqual(['builder', 'handle']);
  });

  it('may end with a key of one’s own', () => {
    expect(path('structure.nose block')).toEqual(['structure', 'nose block']);
    expect(fieldNamed(describeShape(challenge), 'eligibility.wing-loading').ok).toBe(true);
  });

  it('is corrected where it is nearly one, and told what there is where it is not', () => {
    expect(path('wing.spam')).toBe('`wing.spam` names no field: "spam" is not known. Did you mean "span"?');
    expect(path('wing.qqqqqq')).toBe(
      '`wing.qqqqqq` names no field: "qqqqqq" is not known. Known here: span, panels, area, chord, incidence, section.',
    );
    expect(path('name.first')).toBe(
      '`name.first` names no field: what stands before "first" holds one value, not fields.',
    );
  });
});

it('a field in a list that has a gap before it has no place yet', () => {
  expect(setNamed(entry, {}, 'motors.2.count', '1')).toMatchObject({ ok: false });
  expect(setNamed(entry, { builder: 'pip' }, 'builder.name', 'Pip')).toMatchObject({ ok: false });
});

it('the number of a new flight is above every one that was given', () => {
  expect(nextNumber([])).toBe(1);
  expect(nextNumber([1, 7, 3])).toBe(8);
  expect(nextNumber([2, Number.NaN, 1.5, Number.POSITIVE_INFINITY])).toBe(3);
});
