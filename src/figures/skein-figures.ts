import { breakTurns, weighedSection } from '../rubber/skein.ts';
import type { FigureDefinition } from './definition.ts';
import { equals, fraction, product, root, words } from './formula.ts';
import { by, orElse } from './formula-line.ts';
import { shownInput } from './given.ts';
import { scatter } from './scatter.ts';
import {
  readDensity,
  readSkeinLength,
  readSkeinMass,
  readStrandsSection,
  wasWeighed,
} from './skein-readings.ts';
import * as the from './symbols.ts';
import { readTurns } from './turns-reading.ts';

/** The next skein breaks no more predictably than this share of the mean, however well a few tests agree. */
const breakTurnsFloor = 0.05;

/** Figures of each motor's skein. */
export const skeinFigures: readonly FigureDefinition[] = [
  {
    id: 'skein-section',
    name: 'Skein section',
    unit: 'm2',
    of: 'model',
    scope: 'motor',
    explanation:
      'How thick the skein is, slack: the section of all its strands side by side. Scales tell it better than a gauge on soft rubber, so a weighed skein gives it by its mass and length.',
    moves: 'More strands or a thicker strip raises it; the same rubber made up longer has less.',
    formula: [
      by(
        equals(the.section, fraction(the.skeinMass, product(the.rubberDensity, the.skeinLength))),
        'where it was weighed',
      ),
      orElse(product(the.strands, the.width, the.thickness)),
    ],
    source: 'geometry',
    range: 'any skein',
    compute: (from, subject, motor) => {
      // Without a stated length the mass says nothing about the section: it would give back strip and strands.
      if (!wasWeighed(subject, motor) || (motor.motor.skein?.length ?? null) === null)
        return readStrandsSection(from, subject, motor);
      return weighedSection(
        readSkeinMass(from, subject, motor),
        readDensity(from, subject, motor),
        readSkeinLength(from, subject, motor),
      );
    },
  },
  {
    id: 'break-turns',
    name: 'Break turns',
    unit: 'turns',
    of: 'model',
    scope: 'motor',
    explanation:
      'The turns at which the skein is expected to break. Tests of ones like it win; their scatter, but at least 5 %, is the uncertainty, for it is the next skein that breaks. Else it follows from length and section with a constant found in practice.',
    moves: 'A longer or thinner skein raises it; tired, dry or cold rubber lowers it.',
    formula: [
      by(words('the mean of the tests')),
      orElse(fraction(product(the.turnsConstant, the.skeinLength), root(the.section))),
    ],
    source: 'common practice, no source; tested turns as stated',
    range: 'the rule: lubricated, broken-in skeins of contest-grade strip',
    compute: (from, subject, motor) => {
      const tests = motor.motor.breakTurns;
      const name = `the tested break turns${motor.suffix}`;
      const [only] = tests;
      if (only !== undefined && tests.length === 1) return from.value(only, name);
      if (only !== undefined)
        return from.derived(tests, name, () => {
          const { mean, deviation } = scatter(tests.map((test) => test.value));
          return {
            kind: 'turns',
            value: mean,
            u: Math.max(deviation, breakTurnsFloor * mean),
            origin: only.origin,
          };
        });
      const section = from.figure('skein-section');
      return breakTurns(from.assume('turns-constant'), readSkeinLength(from, subject, motor), section);
    },
  },
  {
    id: 'wound-share',
    name: 'Share of the break turns wound',
    unit: '1',
    kind: 'share',
    of: 'flight',
    scope: 'motor',
    explanation:
      'How near to breaking the motor was wound for the flight. Above 95 % the next skein may well break; above 100 % this one held more than was expected of it.',
    moves: 'More turns on the same skein raise it; a longer or thinner skein lowers it at the same turns.',
    formula: [by(equals(the.woundShare, fraction(the.turns, the.breakTurns)))],
    substitution: {
      units: ['1', '%'],
      of: (given) => {
        const [turns] = given.inputs;
        return turns?.quantity.kind !== 'turns'
          ? null
          : fraction(shownInput(turns, 'turns'), given.figure('break-turns', 'turns'));
      },
    },
    source: 'definition; where the flight does not state its turns, common practice',
    range: 'any; not clamped',
    compute: (from, subject, motor) => {
      const turns = readTurns(from, subject, motor);
      return turns === null ? from.assume('wound-share') : turns / from.figure('break-turns');
    },
  },
];
