import { gravity } from '../flight/gravity.ts';
import type { FigureDefinition } from './definition.ts';
import { readAirframeMass, readDesignMass, readRubberMass } from './mass-readings.ts';
import { geometricSkeinMass } from './skein-readings.ts';

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
    formula: 'Σ count × skein mass; not weighed: density × strands × width × thickness × length',
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
      'The weighed mass of a skein over the mass that its strip, strands and length give. Far from 1, one of the four was mistaken. The builder’s own weights are used even where an official weighed the rubber.',
    formula: 'weighed mass / (density × strands × width × thickness × length)',
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
    formula: 'm = airframe + rubber, or as weighed',
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
    formula: 'as weighed, else m − rubber',
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
    formula: 'rubber / m',
    source: 'common practice, no source',
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
    formula: 'm·g/S',
    source: 'standard definition',
    range: 'any',
    compute: (from) => (from.figure('flying-mass') * gravity) / from.figure('wing-area'),
  },
];
