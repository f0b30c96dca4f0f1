import { describe, expect, it } from 'vitest';
import { readBack, shapeWithin } from '../../../src/almanac/review/read-back.ts';
import { describeShape } from '../../../src/entries/describe/describe-shape.ts';
import { entry } from '../../../src/entries/schema/entry.ts';

// Conversions by hand: 1 ft = 0.3048 m and 1 in = 25.4 mm (International yard and pound agreement, 1959).

const shape = describeShape(entry);

function read(path: readonly (string | number)[], text: string) {
  return readBack(text, path.reduce<ReturnType<typeof shapeWithin>>(shapeWithin, shape));
}

describe('what was understood of a text', () => {
  it.each([
    ['a clock', ['flights', 0, 'time'], '1:30', 'time', 90],
    ['feet and inches', ['wing', 'span'], '10\' 6"', 'length', 3.2004],
    ['a fraction', ['motors', 0, 'skein', 'strip', 'width'], '1/8 in', 'length', 0.003175],
    ['a decimal comma', ['mass', 'airframe'], '612,5 g', 'mass', 0.6125],
    ['cranks of a winder', ['flights', 0, 'turns'], '54 x 10', 'turns', 540],
    ['a list with one reading each', ['flights', 0, 'watches'], '41.62 s', 'time', 41.62],
    ['a balance as a length', ['balance'], '104 mm', 'length', 0.104],
    ['a balance as a share', ['balance'], '38 %', 'share', 0.38],
    ['a plain number', ['flights', 0, 'rubber', 'stretched-to'], '4,5', 'number', 4.5],
  ] as const)('is a number in SI: %s', (_, path, text, kind, value) => {
    const found = read(path, text);
    expect(found).toMatchObject({ written: text, kind, u: null });
    expect(found?.value).toBeCloseTo(value, 12);
  });

  it('has the ± that was stated', () => {
    expect(read(['wing', 'span'], '3.20 m ± 5 mm')?.u).toBeCloseTo(0.005, 12);
  });

  it('is nothing for what is no number, cannot be read, or stands where no field is', () => {
    expect(read(['name'], '12')).toBeNull();
    expect(read(['wing', 'span'], '12 parsecs')).toBeNull();
    expect(read(['wing', 'feathers'], '12 m')).toBeNull();
  });
});
