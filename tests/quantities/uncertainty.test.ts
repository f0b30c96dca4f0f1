import { describe, expect, it } from 'vitest';
import { type ParseOptions, parseQuantity } from '../../src/quantities/parse.ts';
import type { Kind } from '../../src/quantities/quantity.ts';

function uOf(text: string, kind: Kind, options?: ParseOptions): number | string {
  const parsed = parseQuantity(text, kind, options);
  return parsed.ok ? parsed.value.u : parsed.fault.code;
}

const root12 = Math.sqrt(12);
const inch = 0.0254;

describe('a stated uncertainty', () => {
  it.each<[string, Kind, number]>([
    ['3.20 m ± 5 mm', 'length', 0.005],
    ['3.20 m +/- 5 mm', 'length', 0.005],
    ['3.20 m +- 5 mm', 'length', 0.005],
    ['3.20 m±5mm', 'length', 0.005],
    ['3.20 ± 0.01 m', 'length', 0.01],
    ['3.20 m ± 1 %', 'length', 0.032],
    ['3.20 m ± 1/8 in', 'length', inch / 8],
    ['10 ft 6 in ± 1 in', 'length', inch],
    ['3.20 m ± 0 mm', 'length', 0],
    ['-40 mm ± 1 %', 'length', 0.0004],
    ['45 % ± 1 %', 'share', 0.01],
    ['0.45 ± 0.01', 'share', 0.01],
    ['0.45 ± 1 %', 'share', 0.01],
    ['54 x 10 ± 10', 'turns', 10],
    ['54 x 10 ± 1 %', 'turns', 5.4],
    ['4.0 ± 0.2', 'number', 0.2],
    ['4.0 ± 5 %', 'number', 0.2],
    ['14 °C ± 1 °C', 'temperature', 1],
    ['57 °F ± 2 °F', 'temperature', 10 / 9],
    ['2:05.4 ± 0.1 s', 'time', 0.1],
    ['3° ± 0.5°', 'angle', Math.PI / 360],
  ])('%s', (text, kind, u) => {
    expect(uOf(text, kind, { negative: true })).toBeCloseTo(u, 14);
  });

  it('wins over every floor', () => {
    expect(uOf('3.20 m ± 1 mm', 'length', { floor: 'span' })).toBe(0.001);
  });

  it.each<[string, Kind, string]>([
    ['3.20 m ± 0.01', 'length', 'missing-unit'],
    ['3.20 ± 1 %', 'length', 'missing-unit'],
    ['3.20 m ± x', 'length', 'not-a-quantity'],
    ['3.20 m ±', 'length', 'not-a-quantity'],
    ['± 5 mm', 'length', 'not-a-quantity'],
    ['3 m ± 1 mm ± 2 mm', 'length', 'not-a-quantity'],
    ['3.20 m ± -5 mm', 'length', 'impossible-value'],
    ['3.20 m ± -1 %', 'length', 'impossible-value'],
    ['3.20 m ± 1e309 mm', 'length', 'impossible-value'],
    ['3.20 m ± 5 kg', 'length', 'wrong-kind-of-unit'],
    ['14 °C ± 1 %', 'temperature', 'wrong-kind-of-unit'],
    ['45 % ± 1', 'share', 'missing-unit'],
    ['38 ± 1 %', 'share', 'missing-unit'],
  ])('%s is refused: %s %s', (text, kind, code) => {
    expect(uOf(text, kind)).toBe(code);
  });
});

// Rectangular distribution of a rounded reading: resolution / √12 (JCGM 100:2008, 4.3.7 and F.2.2.1).
describe('the resolution written', () => {
  it.each<[string, Kind, number]>([
    ['3.20 m', 'length', 0.01],
    ['320 cm', 'length', 0.01],
    ['3 m', 'length', 1],
    ['10 ft 6 in', 'length', inch],
    ['10 ft 6.5 in', 'length', inch / 10],
    ['10.5 ft', 'length', 0.03048],
    ['1/8 in', 'length', inch / 8],
    ['54 x 10', 'turns', 10],
    ['54.5 x 10', 'turns', 1],
    ['640', 'turns', 1],
    ['2:05', 'time', 1],
    ['2:05.4', 'time', 0.1],
    ['1 min 2.4 s', 'time', 0.1],
    ['38 %', 'share', 0.01],
    ['0.385', 'share', 0.001],
    ['14 °C', 'temperature', 1],
    ['57 °F', 'temperature', 5 / 9],
    ['1.5e2 mm', 'length', 0.01],
  ])('%s', (text, kind, resolution) => {
    expect(uOf(text, kind)).toBeCloseTo(resolution / root12, 14);
  });

  it('whole feet and yards are read to an inch', () => {
    for (const text of ['10 ft', '3 yd', '2 yd 1 ft', "10'"])
      expect(uOf(text, 'length')).toBeCloseTo(inch / root12, 14);
  });
});

// What such a thing is measured with: common practice, no source.
describe('the floors', () => {
  it.each<[string, Kind, NonNullable<ParseOptions['floor']>, number]>([
    ['3.200 m', 'length', 'span', 0.0064],
    ['300.0 mm', 'length', 'chord', 0.003],
    ['87.60 dm2', 'area', 'area', 0.01752],
    ['1.350 m', 'length', 'arm', 0.0135],
    ['104.0 mm', 'length', 'balance', 0.002],
    ['3.20 mm', 'length', 'strip', 0.000128],
    ['480 mm', 'length', 'skein-length', 0.0048],
    ['320 mm', 'length', 'propeller-diameter', 0.0032],
    ['400 mm', 'length', 'pitch', 0.02],
    ['800', 'turns', 'break-turns', 40],
    ['28.0°', 'angle', 'angle', Math.PI / 180],
    ['612 g', 'mass', 'mass', 0.00306],
    ['15.4 g', 'mass', 'mass', 1e-4],
    ['15.40 g', 'mass', 'mass', 0.000077],
    ['1.40 g', 'mass', 'mass', 1e-5],
    ['1.400 g', 'mass', 'mass', 1e-5],
    ['0.0014 kg', 'mass', 'mass', 1e-4],
    ['1 1/2 oz', 'mass', 'mass', 0.005 * 1.5 * 0.028349523125],
    ['1/8 in', 'length', 'strip', 0.04 * 0.003175],
    ['10 ft 6 1/2 in', 'length', 'span', 0.002 * 126.5 * inch],
  ])('%s as a %s for the %s', (text, kind, floor, u) => {
    expect(uOf(text, kind, { floor })).toBeCloseTo(u, 14);
  });

  it('give way to a coarser reading', () => {
    expect(uOf('3 m', 'length', { floor: 'span' })).toBeCloseTo(1 / root12, 14);
    expect(uOf('4 g', 'mass', { floor: 'mass' })).toBeCloseTo(0.001 / root12, 14);
  });

  it('leave a balance given as a share alone: the chord is not known here', () => {
    expect(uOf('38 %', 'share', { floor: 'balance' })).toBeCloseTo(0.01 / root12, 14);
    expect(uOf('-5 %', 'share', { floor: 'balance' })).toBeCloseTo(0.01 / root12, 14);
  });
});
