import type { FigureDefinition } from './definition.ts';
import { fraction, words } from './formula.ts';
import { by } from './formula-line.ts';
import { shownInput } from './given.ts';
import * as the from './symbols.ts';
import { readTurns, turnsDiffer } from './turns-reading.ts';

/** Figures of the time in the air. */
export const durationFigures: readonly FigureDefinition[] = [
  {
    id: 'best-time',
    name: 'Best time',
    unit: 's',
    of: 'flight',
    scope: 'entry',
    explanation:
      'The official time of the flight these figures are of: what the watches read under the timing rules of the challenge, or what was ruled.',
    moves:
      'More energy in the rubber for each gram of the model, and a lower sinking speed, raise it; so does rising air.',
    formula: [by(words('the official time'))],
    source: 'timing rules of the challenge',
    range: 'any flight',
    compute: (from, { flown }) => {
      if (flown === null) return from.absent('needs a flight that can count');
      const { seconds, u, ruled } = flown.official;
      return from.derived(flown.official, 'the official time', () => ({
        kind: 'time',
        value: seconds,
        u,
        origin: ruled ? 'inspected' : 'measured',
      }));
    },
  },
  {
    id: 'duration-per-turn',
    name: 'Duration per turn',
    unit: 's',
    of: 'flight',
    scope: 'entry',
    explanation:
      'How long the model stayed up, under power and in the glide, for each turn on a motor. A propeller that turns slowly makes it long, and so does a long glide.',
    moves:
      'A larger or more steeply pitched propeller on a thicker skein raises it, a lower sinking speed too.',
    formula: [by(fraction(the.bestTime, the.turns))],
    substitution: {
      units: ['s'],
      of: (given) => {
        const [turns] = given.inputs;
        return turns === undefined
          ? null
          : fraction(given.figure('best-time', 's'), shownInput(turns, 'turns'));
      },
    },
    source: 'definition',
    range: 'flights that state their turns',
    compute: (from, { flown }) => {
      const time = from.figure('best-time');
      return time / from.need(flown?.flight.turns[0], 'the turns of the flight');
    },
    perMotor: {
      when: turnsDiffer,
      compute: (from, subject, motor) => {
        const turns =
          readTurns(from, subject, motor) ?? from.absent(`needs the turns of the flight${motor.suffix}`);
        return from.figure('best-time') / turns;
      },
    },
  },
  {
    id: 'duration-per-gram-of-rubber',
    name: 'Duration per gram of rubber',
    unit: 's/kg',
    of: 'flight',
    scope: 'entry',
    explanation: 'How long the model stayed up for each gram of its rubber.',
    moves:
      'A lower sinking speed and a propeller that wastes less raise it; more rubber on the same airframe mostly lowers it.',
    formula: [by(fraction(the.bestTime, the.rubberMass))],
    substitution: {
      units: ['s/g'],
      of: (given) => fraction(given.figure('best-time', 's'), given.figure('rubber-mass', 'g')),
    },
    source: 'definition',
    range: 'any flight',
    compute: (from) => from.figure('best-time') / from.figure('rubber-mass'),
  },
];
