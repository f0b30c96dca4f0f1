import { describe, expect, it } from 'vitest';
import { changeInWords } from '../../../src/contest/verdicts/change-in-words.ts';
import { challenge, figureCondition } from '../invented-challenge.ts';
import { figure, figures } from '../invented-contender.ts';

// g/dm² from N/m²: 1 gf = 0.00980665 N (3rd CGPM 1901), 100 dm² = 1 m², so 1 g/dm² = 0.980665 N/m². Wording: our own.

const noRule = challenge();
const none = figures();

describe('a figure that changed after a ruling', () => {
  it('is told in the unit of the bench, to three digits', () => {
    // 13.767133 / 0.980665 = 14.0386…, 13.404355 / 0.980665 = 13.6686…
    expect(changeInWords(noRule, 'wing-loading', 13.767133, 13.404355, none)).toEqual({
      what: 'wing-loading',
      ruled: '14.0 g/dm2',
      now: '13.7 g/dm2',
    });
    expect(changeInWords(noRule, 'flying-mass', 1.518, 1.478, none)).toMatchObject({
      ruled: '1518 g',
      now: '1478 g',
    });
    expect(changeInWords(noRule, 'wing-area', 0.524, 0.531, none)).toMatchObject({
      ruled: '52.4 dm2',
      now: '53.1 dm2',
    });
  });

  it('is told in the unit of the limit on it', () => {
    // A yard is 0.9144 m by definition (1959), a foot a third of it: 2.4384 m is 8 ft, 2.286 m is 7.5 ft.
    const rules = challenge({ eligibility: [figureCondition('span', 'at most 9 ft', 'length')] });
    expect(changeInWords(rules, 'span', 2.4384, 2.286, none)).toMatchObject({
      ruled: '8.00 ft',
      now: '7.50 ft',
    });
  });

  it('is told to as many digits as show the difference', () => {
    expect(changeInWords(noRule, 'span', 3, 3.0042, none)).toMatchObject({
      ruled: '3.000 m',
      now: '3.004 m',
    });
  });

  it('is told for each motor, turns without a unit', () => {
    expect(changeInWords(noRule, 'break-turns', [812, 640], [812, 655], none)).toMatchObject({
      ruled: '812, 640',
      now: '812, 655',
    });
  });

  it('says why it is absent now', () => {
    const absent = { id: 'tail-volume', unit: '1', absent: 'needs an arm' } as const;
    expect(changeInWords(noRule, 'tail-volume', 0.912, null, figures(absent))).toMatchObject({
      ruled: '0.912',
      now: 'absent: needs an arm',
    });
    expect(changeInWords(noRule, 'span', 3, null, figures(figure('span', 'm', 3))).now).toBe('absent');
  });
});

it('tells facts as the entry writes them', () => {
  expect(changeInWords(noRule, 'onboard', ['release', 'locator'], [], none)).toMatchObject({
    ruled: 'release, locator',
    now: 'none',
  });
  expect(changeInWords(noRule, 'junior', true, false, none)).toMatchObject({ ruled: 'yes', now: 'no' });
});
