import { gravity } from '../flight/gravity.ts';
import type { FigureDefinition } from './definition.ts';
import { equals, type Formula, fraction, minus, product, sum, times, total, words } from './formula.ts';
import { by, orElse, where } from './formula-line.ts';
import { Given, shownInput } from './given.ts';
import { readAirframeMass, readDesignMass, readRubberMass } from './mass-readings.ts';
import { rubberParts } from './rubber-terms.ts';
import { shownGravity } from './shown-gravity.ts';
import { geometricSkeinMass } from './skein-readings.ts';
import * as the from './symbols.ts';

const tooMuchRubber = 'needs a flying mass greater than that of the rubber';

/** Figures of what the model weighs and how its wing carries it. */
export const massFigures: readonly FigureDefinition[] = [
  {
    id: 'rubber-mass',
    name: 'Rubber mass',
    unit: 'kg',
    of: 'model',
    scope: 'entry',
    explanation:
      'What all the rubber in the model weighs. Where a skein was not weighed, its mass follows from strip, strands, length and density. An official weighing stands instead.',
    moves: 'Longer skeins, more strands or more motors raise it.',
    formula: [
      by(total(product(the.count, the.skeinMass))),
      where(
        equals(
          the.skeinMass,
          product(the.rubberDensity, the.strands, the.width, the.thickness, the.skeinLength),
        ),
        'for a skein that was not weighed',
      ),
    ],
    substitution: { units: ['g'], of: (given) => rubberWithNumbers(given) },
    source: 'measured; geometry',
    range: 'any',
    compute: readRubberMass,
  },
  {
    id: 'skein-mass-check',
    name: 'Skein mass check',
    unit: '1',
    of: 'model',
    scope: 'motor',
    explanation:
      'The weighed mass of a skein over the mass that its strip, strands and length give. Far from 1, one of them is off: the weight, the strip, the strands, the length or the density. The builder’s own weights are used even where an official weighed the rubber.',
    moves:
      'Lubricant on the scales, strip thicker than stated or a length taken under tension moves it away from 1.',
    formula: [
      by(
        fraction(
          the.skeinMass,
          product(the.rubberDensity, the.strands, the.width, the.thickness, the.skeinLength),
        ),
        'as weighed over as reckoned',
      ),
    ],
    source: 'geometry',
    range: '0.8 to 1.25 is what measuring strip with a rule and a gauge explains',
    compute: (from, subject, motor) => {
      const weighed = from.need(motor.motor.skein?.mass, `the rubber's mass${motor.suffix}`);
      return weighed / geometricSkeinMass(from, subject, motor);
    },
  },
  {
    id: 'flying-mass',
    name: 'Flying mass',
    unit: 'kg',
    of: 'model',
    scope: 'entry',
    explanation:
      'What the model weighs as it is launched: airframe and rubber. A flight that states its own mass is worked out with that.',
    moves: 'A heavier airframe or more rubber raises it.',
    formula: [by(equals(the.mass, sum(the.airframeMass, the.rubberMass))), orElse(words('as weighed'))],
    substitution: { units: ['g'], of: massWithNumbers },
    source: 'measured',
    range: 'any',
    compute: (from, subject) =>
      subject.mass === null
        ? readDesignMass(from, subject)
        : from.value(subject.mass, "the flight's own mass"),
  },
  {
    id: 'airframe-mass',
    name: 'Airframe mass',
    unit: 'kg',
    of: 'model',
    scope: 'entry',
    explanation: 'What the model weighs ready to fly, but without its rubber.',
    moves: 'Lighter wood, a thinner covering and less glue lower it.',
    formula: [by(words('as weighed')), orElse(minus(the.mass, the.rubberMass))],
    substitution: {
      units: ['g'],
      of: (given) =>
        given.inputs.length > 0
          ? null
          : minus(given.figure('flying-mass', 'g'), given.figure('rubber-mass', 'g')),
    },
    source: 'measured',
    range: 'any',
    compute: (from, { design }) => {
      const weighed = readAirframeMass(from, design);
      if (weighed !== null) return weighed;
      const left = from.figure('flying-mass') - from.figure('rubber-mass');
      return left > 0 ? left : from.absent(tooMuchRubber);
    },
  },
  {
    id: 'rubber-share',
    name: 'Share of rubber',
    unit: '1',
    kind: 'share',
    of: 'model',
    scope: 'entry',
    explanation:
      'How much of the flying mass is rubber. With all else equal, duration is longest when two thirds of the mass are rubber; no airframe is that light for long.',
    moves: 'More rubber or a lighter airframe raises it.',
    formula: [by(fraction(the.rubberMass, the.mass))],
    substitution: {
      units: ['1', '%'],
      of: (given) => fraction(given.figure('rubber-mass', 'g'), given.figure('flying-mass', 'g')),
    },
    source:
      'definition; the two thirds: energy balance, with a sinking speed that grows as the root of the mass',
    range: 'any',
    compute: (from) => {
      const share = from.figure('rubber-mass') / from.figure('flying-mass');
      return share < 1 ? share : from.absent(tooMuchRubber);
    },
  },
  {
    id: 'wing-loading',
    name: 'Wing loading',
    unit: 'N/m2',
    of: 'model',
    scope: 'entry',
    explanation:
      'The weight that each part of the wing carries. The lower it is, the slower the model flies and sinks.',
    moves: 'A lighter airframe, less rubber or a larger wing lowers it.',
    formula: [by(fraction(product(the.mass, the.gravity), the.area))],
    substitution: {
      units: ['N/m2', 'g/dm2'],
      of: (given) =>
        fraction(times(given.figure('flying-mass', 'kg'), shownGravity), given.figure('wing-area', 'm2')),
    },
    source: 'standard definition',
    range: 'any',
    compute: (from) => (from.figure('flying-mass') * gravity) / from.figure('wing-area'),
  },
];

function rubberWithNumbers(given: Given): Formula | null {
  const parts = rubberParts(given);
  const [only] = parts ?? [];
  // A single mass is as it was weighed.
  if (parts === null || (only?.is === 'quantity' && parts.length === 1)) return null;
  return sum(...parts);
}

/** The airframe and each kind of motor's rubber; null for a mass as it was weighed. */
function massWithNumbers(given: Given): Formula | null {
  const [airframe] = given.inputs;
  const rubber = rubberParts(new Given(given.terms.slice(1)));
  return airframe === undefined || rubber === null ? null : sum(shownInput(airframe, 'g'), ...rubber);
}
