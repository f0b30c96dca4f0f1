import { describe, expect, it } from 'vitest';
import {
  applied,
  equals,
  fraction,
  integral,
  minus,
  number,
  power,
  product,
  quantity,
  root,
  sum,
  symbol,
  times,
  toMathML,
  toText,
  total,
  words,
} from '../../src/figures/formula.ts';

const a = symbol('a', 'one thing');
const b = symbol('b', 'another', 'low');

describe('a formula as MathML', () => {
  // Written by hand after MathML Core (W3C): mfrac, msup, msqrt and msub take their parts in this order.
  it('sets fractions, powers, roots and subscripts', () => {
    expect(toMathML(equals(a, fraction(power(b, '2'), root(sum(a, number('4'))))))).toBe(
      '<math displaystyle="true"><mrow><mi>a</mi><mo>=</mo><mfrac>' +
        '<msup><msub><mi>b</mi><mtext>low</mtext></msub><mn>2</mn></msup>' +
        '<msqrt><mrow><mi>a</mi><mo>+</mo><mn>4</mn></mrow></msqrt></mfrac></mrow></math>',
    );
  });

  it('brackets a sum within a product, and keeps what could be markup a text', () => {
    expect(toMathML(product(sum(a, words('<b> & c')), integral(a, b)))).toBe(
      '<math displaystyle="true"><mrow><mrow><mo>(</mo><mrow><mi>a</mi><mo>+</mo><mtext>&lt;b> &amp; c</mtext></mrow>' +
        '<mo>)</mo></mrow><mo>·</mo><mrow><mo>∫</mo><mi>a</mi><mspace width="0.17em"/><mi>d</mi>' +
        '<msub><mi>b</mi><mtext>low</mtext></msub></mrow></mrow></math>',
    );
  });
});

describe('a formula as text', () => {
  // By the order of operations: powers, then products and quotients, then sums.
  it.each([
    [fraction(a, product(a, b)), 'a/(a·b_low)'],
    [fraction(sum(a, b), a), '(a + b_low)/a'],
    [product(fraction(a, b), a), '(a/b_low)·a'],
    [product(a, fraction(a, b)), 'a·a/b_low'],
    [minus(a, sum(a, b)), 'a − (a + b_low)'],
    [minus(sum(a, b), a), 'a + b_low − a'],
    [power(fraction(a, b), '1.5'), '(a/b_low)^1.5'],
    [root(product(a, b)), '√(a·b_low)'],
    [product(total(product(a, b)), a), '(Σ a·b_low)·a'],
    [total(sum(a, b)), 'Σ (a + b_low)'],
    [applied(a, b), 'a(b_low)'],
    [fraction(words('best time'), words('turns')), 'best time / turns'],
    // (3.2 m)² is 10.24 m², 3.2 m² is not.
    [power(quantity('3.2', 'm'), '2'), '(3.2\u00a0m)²'],
    [times(number('2'), quantity('15.5', 'g')), '2 × 15.5\u00a0g'],
    [minus(quantity('3', '°'), quantity('0.5', '°')), '3° − 0.5°'],
  ])('%#: %s', (formula, text) => {
    expect(toText(formula)).toBe(text);
  });
});
