import { all, create, type Unit } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { evaluate } from '../../src/figures/evaluate.ts';
import { type FigureSet, isPresent } from '../../src/figures/figure.ts';
import { toText } from '../../src/figures/formula.ts';
import { figureDefinitions } from '../../src/figures/registry.ts';
import { substituted } from '../../src/figures/substituted.ts';
import { batch, design, flown, fullDesign, measured, motor, skein, subject } from './example-design.ts';

/** mathjs knows units and the order of operations by itself: it reckons every line from its text. */
const math = create(all ?? {});

const full = evaluate(
  subject({ design: fullDesign(), batches: new Map([['fen-a', batch()]]), flown: flown() }),
  'all',
);
const plain = evaluate(subject({ flown: flown() }), 'all');

function lineOf(set: FigureSet, id: string): string | null {
  const figure = [set.entry, ...set.motors].map((map) => map.get(id)).find(isPresent);
  if (figure === undefined) throw new Error(`${id} is not there`);
  const line = substituted(figure);
  return line === null ? null : toText(line);
}

/** One side of a line as mathjs reads it; a number and its unit belong together. */
function reckoned(side: string): Unit | number {
  const written = side
    .replace(/([\d.]+)\u00a0turns/g, '$1')
    .replace(/([\d.]+)\u00a0%/g, '($1 / 100)')
    .replace(/([\d.]+)°/g, '($1 deg)')
    .replace(/([\d.]+)\u00a0([^\s()]+)/g, '($1 $2)')
    .replaceAll('×', '*')
    .replaceAll('−', '-')
    .replaceAll('²', '^2')
    .replaceAll('³', '^3');
  return math.evaluate(written) as Unit | number;
}

/** As a pure number in SI. A loading in g/dm² is a mass: its weight is that by standard gravity (3rd CGPM 1901). */
function inSi(value: Unit | number): number {
  if (typeof value === 'number') return value;
  const si = value.toSI();
  const text = si.formatUnits();
  return si.toNumber(text) * (text.replaceAll(' ', '') === 'kg/m^2' ? 9.80665 : 1);
}

const asked = [
  'wing-area',
  'mean-chord',
  'aspect-ratio',
  'rubber-mass',
  'flying-mass',
  'wing-loading',
  'rubber-share',
  'tail-volume',
  'fin-volume',
  'static-margin',
  'trim-ballast',
  'stored-energy',
  'energy-per-gram',
  'energy-height',
  'duration-per-turn',
  'duration-per-gram-of-rubber',
];

describe('numbers put into the formulas', () => {
  it.each(asked)('of %s come to what is said', (id) => {
    const line = lineOf(full, id);
    const [left = '', ...results] = line!.split(' = ');
    expect(results.length).toBeGreaterThan(0);
    const expected = inSi(reckoned(left));
    const figure = full.entry.get(id)!;
    // Terms and results are rounded to four and to three digits.
    for (const result of results) expect(Math.abs(inSi(reckoned(result)) / expected - 1)).toBeLessThan(5e-3);
    expect(isPresent(figure) && Math.abs(figure.value / expected - 1)).toBeLessThan(1.5e-3);
  });

  it('hold for every figure that has such a line', () => {
    const lines = [full, plain].flatMap((set) =>
      [set.entry, ...set.motors].flatMap((map) =>
        [...map.values()].filter(isPresent).flatMap((figure) => {
          const line = substituted(figure);
          return line === null ? [] : [{ id: figure.id, line: toText(line) }];
        }),
      ),
    );
    expect(lines.length).toBeGreaterThan(30);
    for (const { id, line } of lines) {
      const [left = '', result = ''] = line.split(' = ');
      const expected = inSi(reckoned(left));
      expect(Math.abs(inSi(reckoned(result)) - expected), `${id}: ${line}`).toBeLessThan(
        5e-3 * Math.abs(expected),
      );
    }
  });

  // By hand: 612 + 2·15.5 = 643; 0.643·9.80665/0.876 = 7.1983; 7.1983/0.0980665 = 73.4 in g/dm² per 10: 643/87.6 = 7.34.
  it('read as somebody would write them', () => {
    const spaced = (id: string) => lineOf(plain, id)?.replaceAll('\u00a0', ' ');
    expect(spaced('flying-mass')).toBe('612 g + 2 × 15.5 g = 643 g');
    expect(spaced('wing-loading')).toBe('0.643 kg × 9.80665 m/s² / 0.876 m² = 7.2 N/m² = 7.34 g/dm²');
    expect(spaced('aspect-ratio')).toBe('(3.2 m)² / 0.876 m² = 11.7');
    expect(spaced('duration-per-turn')).toBe('42 s / 700 turns = 0.06 s');
  });

  it('are not made up where a value stands as it was measured', () => {
    expect(lineOf(plain, 'wing-area')).toBeNull();
    const inspected = {
      rubber: measured('mass', 0.03, 0.0001),
      airframe: null,
      wingArea: null,
      span: null,
      balance: null,
    };
    const seen = evaluate(subject({ design: design({ inspected }) }), 'model');
    expect(lineOf(seen, 'rubber-mass')).toBeNull();
  });

  it('leave out an airframe whose weight did not help', () => {
    // The rubber is not known, so the weighed whole stands alone.
    const mass = {
      airframe: measured('mass', 0.612, 0.003),
      flying: measured('mass', 0.65, 0.003),
      parts: {},
    };
    const set = evaluate(subject({ design: design({ mass, motors: [motor({ skein: null })] }) }), 'model');
    const whole = set.entry.get('flying-mass');
    expect(isPresent(whole) && whole.worked.map((term) => term.from === 'input' && term.name)).toEqual([
      'the flying mass',
    ]);
    expect(lineOf(set, 'flying-mass')).toBeNull();
  });

  it('tell of each kind of motor, weighed or reckoned, one or several', () => {
    const two = design({ motors: [motor({ count: 1 }), motor({ skein: skein({ mass: null }) })] });
    const set = evaluate(subject({ design: two }), 'model');
    expect(lineOf(set, 'rubber-mass')?.replaceAll('\u00a0', ' ')).toBe(
      '15.5 g + 2 × 0.93 g/cm³ × 10 × 3.2 mm × 1.1 mm × 0.48 m = 46.93 g',
    );
  });
});

describe('what a figure was worked out from', () => {
  it('is told of every figure', () => {
    for (const figure of [...full.entry.values()].filter(isPresent))
      expect(figure.worked.length, figure.id).toBeGreaterThan(0);
    expect(figureDefinitions.length).toBeGreaterThan(40);
  });

  it('names what it read itself, not what that was worked out from', () => {
    const loading = full.entry.get('wing-loading');
    expect(isPresent(loading) && loading.worked.map((term) => term.from === 'figure' && term.id)).toEqual([
      'flying-mass',
      'wing-area',
    ]);
  });
});
