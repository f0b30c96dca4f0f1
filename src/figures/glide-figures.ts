import { powerToStayUp } from '../flight/prediction.ts';
import { readAir } from './air-readings.ts';
import type { FigureDefinition } from './definition.ts';
import { equals, fraction, number, power, product, root, sum, times } from './formula.ts';
import { by, orElse, where } from './formula-line.ts';
import { readMeanOfGlides } from './glide-readings.ts';
import { readPolarGlide } from './polar-readings.ts';
import { shownGravity } from './shown-gravity.ts';
import * as the from './symbols.ts';

/** The polar, by which a glide is estimated; shared by all its figures. */
const polar = [
  where(
    equals(
      the.drag,
      sum(
        product(the.plateFactor, fraction(product(number('2'), number('1.328')), root(the.reynoldsNumber))),
        the.fixedDrag,
        fraction(power(the.lift, '2'), product(the.pi, the.spanEfficiency, the.aspectRatio)),
      ),
    ),
    'at the lift, up to the usable one, where the model sinks slowest',
  ),
  where(
    equals(
      the.speed,
      root(
        fraction(product(number('2'), the.mass, the.gravity), product(the.airDensity, the.area, the.lift)),
      ),
    ),
  ),
];
const polarSource =
  'test glides; else laminar plate by Blasius 1908 and induced drag by Prandtl, with factors from practice; air by CIPM-2007';
const polarRange =
  'glides of 3 m or more in nearly still air; the polar: thin sections at Reynolds numbers of some thousands to 200,000, well trimmed';

/** Figures of the glide without power. */
export const glideFigures: readonly FigureDefinition[] = [
  {
    id: 'sink-speed',
    name: 'Sinking speed',
    unit: 'm/s',
    of: 'flight',
    scope: 'entry',
    explanation:
      'How fast the model comes down when its propellers have stopped. Clean test glides with height and time give it, at the mass they were thrown with, never surer than 15 % for a few and 20 % for one; else an estimate of the model’s drag does, for a well-trimmed model at its slowest sink.',
    moves: 'Less weight on more wing, a more slender wing and propellers that fold lower it.',
    formula: [
      by(fraction(the.glideHeight, the.glideTime), 'mean over clean glides'),
      orElse(product(the.speed, fraction(the.drag, the.lift)), 'of the polar'),
      ...polar,
    ],
    source: polarSource,
    range: polarRange,
    compute: (from, subject) =>
      readMeanOfGlides(from, subject, 'height', 'time') ?? readPolarGlide(from, subject).sink,
  },
  {
    id: 'glide-ratio',
    name: 'Glide ratio',
    unit: '1',
    of: 'flight',
    scope: 'entry',
    explanation:
      'How many metres the model goes for each metre that it comes down. Clean test glides with distance and height give it; else an estimate of the model’s drag does, at its slowest sink, which is a little slower than its flattest glide.',
    moves:
      'A more slender wing, a cleaner airframe and propellers that fold raise it; weight hardly matters.',
    formula: [
      by(fraction(the.glideDistance, the.glideHeight), 'mean over clean glides'),
      orElse(fraction(the.lift, the.drag), 'of the polar'),
      ...polar,
    ],
    source: polarSource,
    range: polarRange,
    compute: (from, subject) => {
      const thrown = readMeanOfGlides(from, subject, 'distance', 'height');
      if (thrown !== null) return thrown;
      const { lift, drag } = readPolarGlide(from, subject);
      return lift / drag;
    },
  },
  {
    id: 'glide-speed',
    name: 'Gliding speed',
    unit: 'm/s',
    of: 'flight',
    scope: 'entry',
    explanation:
      'How fast the model flies in the glide. Clean test glides with distance and time give it; wind is not taken off, so throws with and against it belong together. Else it is the speed at which the wing, as an estimate has it, sinks slowest.',
    moves: 'A lower wing loading lowers it, thin air and a balance further forward raise it.',
    formula: [
      by(fraction(the.glideDistance, the.glideTime), 'mean over clean glides'),
      orElse(the.speed, 'of the polar'),
      ...polar,
    ],
    source: polarSource,
    range: polarRange,
    compute: (from, subject) =>
      readMeanOfGlides(from, subject, 'distance', 'time') ?? readPolarGlide(from, subject).speed,
  },
  {
    id: 'reynolds-number',
    name: 'Reynolds number',
    unit: '1',
    of: 'flight',
    scope: 'entry',
    explanation:
      'Speed times chord, in measures of the air’s stickiness. It says which wing sections can work: below about 50,000 thin, curved plates beat thick ones.',
    moves: 'A wider chord or a faster model raises it.',
    formula: [
      by(
        equals(
          the.reynoldsNumber,
          fraction(product(the.airDensity, the.speed, the.meanAerodynamicChord), the.viscosity),
        ),
        'at the gliding speed',
      ),
    ],
    source:
      'standard definition; density by CIPM-2007, viscosity by Sutherland (US Standard Atmosphere 1976)',
    range: 'as the gliding speed',
    compute: (from, subject) => {
      const { density, viscosity } = readAir(from, subject);
      const chord = from.figure('mean-aerodynamic-chord');
      return (density * from.figure('glide-speed') * chord) / viscosity;
    },
  },
  {
    id: 'power-to-stay-up',
    name: 'Power to stay up',
    unit: 'W',
    of: 'flight',
    scope: 'entry',
    explanation:
      'The power that keeps the model level at its gliding speed. The rubber has to give more, for propellers waste a part of it.',
    moves: 'A lighter model or a lower sinking speed lowers it.',
    formula: [by(product(the.mass, the.gravity, the.sink))],
    substitution: {
      units: ['W'],
      of: (given) =>
        times(given.figure('flying-mass', 'kg'), shownGravity, given.figure('sink-speed', 'm/s')),
    },
    source: 'energy balance',
    range: 'as the sinking speed',
    compute: (from) => powerToStayUp(from.figure('flying-mass'), from.figure('sink-speed')),
  },
];
