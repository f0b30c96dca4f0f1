import { describe, expect, it } from 'vitest';
import { judge } from '../../src/contest/judge.ts';
import { challengeOf, smallestChallenge } from '../entries/written.ts';
import { contender, figure, figures, flight } from './invented-contender.ts';

// FAI Sporting Code, section 4, free flight (masses from memory): F1B: wing and tail of 17 to 19 dm², at least 200 g without
// rubber, at most 30 g of rubber; F1G: at least 70 g and at most 10 g. Classes like these must be writable as eligibility.
const classes = {
  F1B: '{ lifting-area: 17 to 19 dm2, airframe-mass: at least 200 g, rubber-mass: at most 30 g }',
  F1G: '{ airframe-mass: at least 70 g, rubber-mass: at most 10 g }',
};

/** The status of a flight in such a class, of a model of that lifting area in m² and those masses in kg. */
function statusIn(of: keyof typeof classes, area: number, airframe: number, rubber: number) {
  const { challenge, problems } = challengeOf(`${smallestChallenge}\neligibility: ${classes[of]}`);
  if (challenge === null) throw new Error(problems.map(({ message }) => message).join(' '));
  const model = contender('model', {
    figures: figures(
      figure('lifting-area', 'm2', area, 0),
      figure('airframe-mass', 'kg', airframe, 0),
      figure('rubber-mass', 'kg', rubber, 0),
    ),
    flights: [flight(1, 120)],
  });
  const { entries } = judge(challenge, [model], { now: '2027-12-01', frozen: null });
  const judged = entries.get('model')?.flights[0];
  return [judged?.status, judged?.reason?.replace(/ of .*/, '') ?? null];
}

describe('the limits of a sporting class', () => {
  it.each([
    ['F1B', 0.19, 0.2, 0.03, ['provisional', null]],
    ['F1B', 0.17, 0.21, 0.029, ['provisional', null]],
    ['F1B', 0.195, 0.2, 0.03, ['ineligible', 'the lifting area']],
    ['F1B', 0.165, 0.2, 0.03, ['ineligible', 'the lifting area']],
    ['F1B', 0.18, 0.195, 0.03, ['ineligible', 'the airframe mass']],
    ['F1B', 0.18, 0.2, 0.031, ['ineligible', 'the rubber mass']],
    ['F1G', 0.3, 0.07, 0.01, ['provisional', null]],
    ['F1G', 0.3, 0.07, 0.011, ['ineligible', 'the rubber mass']],
    ['F1G', 0.3, 0.068, 0.01, ['ineligible', 'the airframe mass']],
  ] as const)('of %s with %d m², %d kg and %d kg of rubber', (of, area, airframe, rubber, expected) => {
    expect(statusIn(of, area, airframe, rubber)).toEqual(expected);
  });
});
