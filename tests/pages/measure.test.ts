import { describe, expect, it } from 'vitest';
import { measureOf, plainInBoth, secondsAt, secondsText } from '../../src/components/measure.ts';
import { raised } from '../../src/components/number-text.ts';
import { unitPairs } from '../../src/components/units-shown.ts';

const space = '\u00a0';

describe('measureOf', () => {
  // 1 in = 25.4 mm exactly (international yard and pound agreement, 1959): 508 mm are 20 in.
  it('shows both systems, the ± to two digits and the value to the same place', () => {
    const { metric, imperial, metricPlain, imperialPlain } = measureOf(
      0.508,
      0.00254,
      'length',
      unitPairs.size,
    );
    expect({ metric, imperial, metricPlain, imperialPlain }).toEqual({
      metric: `508.0 ± 2.5${space}mm`,
      imperial: `20.00 ± 0.10${space}in`,
      metricPlain: `508${space}mm`,
      imperialPlain: `20${space}in`,
    });
  });

  it('is told from another in JSON', () => {
    const written = (value: number) => JSON.stringify(measureOf(value, 0.002, 'length', unitPairs.size));
    expect(written(0.08)).toContain('80.0 ± 2.0');
    expect(written(0.08)).not.toBe(written(0.0925));
  });

  it('writes no unit beside a pure number and raises powers', () => {
    expect(measureOf(0.5, 0, 'number', unitPairs.plain).metric).toBe('0.5');
    expect(measureOf(0.4, 0.01, 'area', unitPairs.area).metric).toBe(`40.0 ± 1.0${space}dm²`);
  });

  it('sets the degree sign close to both numbers', () => {
    expect(measureOf(Math.PI / 60, Math.PI / 180, 'angle', unitPairs.angle).metric).toBe('3.0° ± 1.0°');
  });

  it('promises no more than its ± holds where that is left out', () => {
    expect(measureOf(1.23456, 0.034, 'length', unitPairs.span).metricPlain).toBe(`1.23${space}m`);
  });
});

describe('a measure without its ±', () => {
  it('is the same text in both systems where both use its unit', () => {
    const turns = plainInBoth(measureOf(540, 5, 'turns', unitPairs.turns));
    expect(turns.metric).toBe(turns.imperial);
    const length = plainInBoth(measureOf(0.508, 0.0025, 'length', unitPairs.size));
    expect(length).toEqual({ metric: `508${space}mm`, imperial: `20${space}in` });
  });
});

describe('raised', () => {
  it('raises powers of units and nothing else', () => {
    expect(raised('at most 6.5 g/dm2')).toBe('at most 6.5 g/dm²');
    expect(raised('20 to 22 cm')).toBe('20 to 22 cm');
  });
});

describe('secondsAt', () => {
  it('has the decimals of the resolution, and those somebody ruled', () => {
    expect(secondsAt(41.7, '0.1')).toBe(`41.7${space}s`);
    expect(secondsAt(92, '0.1')).toBe(`92.0${space}s`);
    expect(secondsAt(92, '1')).toBe(`92${space}s`);
    expect(secondsAt(41.7, '0.01')).toBe(`41.70${space}s`);
    expect(secondsAt(41.75, '0.1')).toBe(`41.75${space}s`);
  });
});

describe('secondsText', () => {
  it('has no ± where there is none', () => {
    expect(secondsText(44.2, 0)).toBe(`44.2${space}s`);
    expect(secondsText(44.2, 0.1)).toBe(`44.20 ± 0.10${space}s`);
  });
});
