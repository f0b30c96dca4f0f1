import { describe, expect, it } from 'vitest';
import { defaults } from '../../src/figures/defaults.ts';
import type { Reader } from '../../src/figures/definition.ts';
import type { Figure, PresentFigure } from '../../src/figures/figure.ts';
import type { Task } from '../../src/figures/node.ts';
import { Propagation } from '../../src/figures/propagate.ts';
import type { Origin, Quantity } from '../../src/quantities/quantity.ts';

type Compute = (from: Reader) => number;

/** Evaluates figures given as plain functions, all of the entry. */
function evaluateAll(computes: Readonly<Record<string, Compute>>): Record<string, Figure> {
  const tasks = new Map<string, Task>(
    Object.entries(computes).map(([id, compute]) => [id, { id, unit: '1', motor: null, compute }]),
  );
  const figures = new Propagation((id) => tasks.get(id)!, defaults).figures([...tasks.values()]);
  return Object.fromEntries(figures.map((figure) => [figure.id, figure]));
}

function present(figure: Figure | undefined): PresentFigure {
  if (figure === undefined || !('value' in figure)) throw new Error(`absent: ${figure?.absent}`);
  return figure;
}

const number = (value: number, u: number, origin: Origin = 'measured'): Quantity => ({
  kind: 'number',
  value,
  u,
  origin,
  written: '',
});

describe('propagation', () => {
  it('combines independent inputs as the end-gauge example does', () => {
    // JCGM 100:2008, annex H.1 (first order, from memory): components 25, 9.7, 2.9 and 16.6 nm → 32 nm.
    const inputs = [number(100, 25), number(50, 9.7), number(7, 2.9), number(3, 16.6)];
    const { sum } = evaluateAll({
      sum: (from) => inputs.reduce((total, input, index) => total + from.value(input, `input ${index}`), 0),
    });
    expect(Math.round(present(sum).u)).toBe(32);
    expect(present(sum).shares[0]!.input).toBe('input 0');
    expect(present(sum).shares.reduce((total, { share }) => total + share, 0)).toBeCloseTo(1, 12);
  });

  it('multiplies relative uncertainties of a product of powers', () => {
    // JCGM 100:2008, 5.1.6, equation 12: for Y = X1²/X2, (u/y)² = (2·u1/x1)² + (u2/x2)².
    const a = number(10, 0.01);
    const b = number(4, 0.01);
    const { ratio } = evaluateAll({ ratio: (from) => from.value(a, 'a') ** 2 / from.value(b, 'b') });
    const expected = 25 * Math.hypot((2 * 0.01) / 10, 0.01 / 4);
    expect(present(ratio).u / expected).toBeCloseTo(1, 5);
  });

  it('lets an input that is read twice, once through another figure, cancel', () => {
    const span = number(3, 0.1);
    const chord = number(0.2, 0.01);
    const figures = evaluateAll({
      area: (from) => from.value(span, 'span') * from.value(chord, 'chord'),
      'mean-chord': (from) => from.figure('area') / from.value(span, 'span'),
    });
    expect(present(figures['mean-chord']).u).toBeCloseTo(0.01, 12);
    expect(present(figures['mean-chord']).shares).toEqual([{ input: 'chord', share: expect.closeTo(1, 9) }]);
  });

  it('keeps two equal measurements apart: they do not cancel', () => {
    const { difference } = evaluateAll({
      difference: (from) => from.value(number1, 'first') - from.value(number2, 'second'),
    });
    expect(present(difference).value).toBe(0);
    expect(present(difference).u).toBeCloseTo(Math.SQRT2 * 0.1, 12);
  });
  const number1 = number(1, 0.1);
  const number2 = number(1, 0.1);

  it('does not work out again what does not rest on the moved input', () => {
    let runs = 0;
    const a = number(1, 0.1);
    const b = number(2, 0.1);
    evaluateAll({
      costly: (from) => {
        runs += 1;
        return from.value(a, 'a');
      },
      reader: (from) => from.figure('costly') + from.value(b, 'b'),
    });
    // Once for its value, once up and once down for a; never for b.
    expect(runs).toBe(3);
  });

  it('passes on why an input is missing', () => {
    const figures = evaluateAll({
      volume: (from) => from.need(null, "the tailplane's arm"),
      point: (from) => 0.25 + from.figure('volume'),
    });
    expect(figures.point).toEqual({ id: 'point', unit: '1', absent: "needs the tailplane's arm" });
  });

  it('lets neither NaN nor infinity out', () => {
    const zero = number(0, 0);
    const figures = evaluateAll({
      infinite: (from) => 1 / from.value(zero, 'zero'),
      nan: () => Number.NaN,
      reader: (from) => from.figure('nan') + 1,
    });
    for (const figure of Object.values(figures))
      expect(figure).toEqual({
        id: figure.id,
        unit: '1',
        absent: 'does not come out as a finite number from what is stated',
      });
  });

  it('takes the other side where a figure ends within the uncertainty of an input', () => {
    // √x at 0.5 ± 1: below zero there is nothing; upward √1.5 − √0.5.
    const input = number(0.5, 1);
    const { root } = evaluateAll({ root: (from) => Math.sqrt(from.value(input, 'x')) });
    expect(present(root).u).toBeCloseTo(Math.sqrt(1.5) - Math.sqrt(0.5), 12);
  });

  it('is absent where a figure holds at one point only', () => {
    const input = number(0, 1);
    const { odd } = evaluateAll({
      odd: (from) => (from.value(input, 'the angle') === 0 ? 1 : from.absent('needs luck')),
    });
    expect(odd).toEqual({
      id: 'odd',
      unit: '1',
      absent: 'cannot be worked out within the uncertainty of the angle',
    });
  });

  it('refuses a figure that depends on itself', () => {
    expect(() => evaluateAll({ a: (from) => from.figure('b'), b: (from) => from.figure('a') })).toThrow(
      'The figure a depends on itself.',
    );
  });

  it('makes a derived number once, as one base input', () => {
    let made = 0;
    const { sum } = evaluateAll({
      sum: (from) => {
        const mean = () =>
          from.derived(number1, 'the mean', () => {
            made += 1;
            return number(5, 0.5);
          });
        return mean() + mean();
      },
    });
    expect(made).toBe(1);
    expect(present(sum).u).toBeCloseTo(1, 12);
  });
});

describe('the basis of a figure', () => {
  const read = (...origins: Origin[]): PresentFigure => {
    const inputs = origins.map((origin) => number(1, 0.1, origin));
    return present(
      evaluateAll({ f: (from) => inputs.reduce((sum, input) => sum + from.value(input, 'x'), 0) }).f,
    );
  };

  it('is the weakest of what it rests on', () => {
    expect(read('measured').basis).toBe('measured');
    expect(read('inspected').basis).toBe('inspected');
    expect(read('inspected', 'exact').basis).toBe('inspected');
    expect(read('inspected', 'measured').basis).toBe('measured');
    expect(read('inspected', 'logged').basis).toBe('logged');
    expect(read('logged', 'assumed').basis).toBe('partly assumed');
  });

  it('is partly assumed with a default, whose words go along through other figures', () => {
    const { outer } = evaluateAll({
      inner: (from) => from.assume('rubber-density'),
      outer: (from) => 2 * from.figure('inner'),
    });
    expect(present(outer).basis).toBe('partly assumed');
    expect(present(outer).assumptions).toEqual(['rubber has a density of 0.93 ± 0.02 g/cm³']);
  });

  it('is not changed by what a failed attempt read, through another figure or itself', () => {
    const weighed = number(643, 3, 'inspected');
    const guessed = number(9, 9);
    const { whole } = evaluateAll({
      sum: (from) => from.assume('rubber-density') + from.absent('needs the strip'),
      whole: (from) =>
        from.attempt(() => from.value(guessed, 'guessed') + from.figure('sum')) ??
        from.value(weighed, 'weighed'),
    });
    expect(present(whole)).toMatchObject({ value: 643, u: 3, basis: 'inspected', assumptions: [] });
    expect(present(whole).shares.map(({ input }) => input)).toEqual(['weighed']);
  });

  it('is not changed by a remark, which is named all the same', () => {
    const { f } = evaluateAll({
      f: (from) => {
        from.note('the drop was not stated');
        return 1;
      },
    });
    expect(present(f).basis).toBe('measured');
    expect(present(f).assumptions).toEqual(['the drop was not stated']);
  });
});
