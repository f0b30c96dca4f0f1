import { powerToStayUp } from '../flight/prediction.ts';
import { readAir } from './air-readings.ts';
import type { FigureDefinition } from './definition.ts';
import { readMeanOfGlides } from './glide-readings.ts';
import { readPolarGlide } from './polar-readings.ts';

const polar =
  'C_D = k·2·1.328/√Re + C_D,par + C_D,prop + C_L²/(π·e·AR), at the C_L up to the usable one where √(2mg/(ρS))·C_D/C_L^1.5 is least';
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
      'How fast the model comes down when its propellers have stopped. Clean test glides with height and time give it, at the mass they were thrown with, never surer than 15 % for a few and 20 % for one; else an estimate of the model’s drag does, for a well-trimmed model at its slowest sink. Less weight on more wing lowers it.',
    formula: `mean of height/time of clean glides; else V·C_D/C_L: ${polar}`,
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
    formula: `mean of distance/height of clean glides; else C_L/C_D: ${polar}`,
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
    formula: `mean of distance/time of clean glides; else V = √(2mg/(ρ·S·C_L)): ${polar}`,
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
    formula: 'Re = ρ·V·MAC/μ at the gliding speed',
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
    formula: 'm·g·sinking speed',
    source: 'energy balance',
    range: 'as the sinking speed',
    compute: (from) => powerToStayUp(from.figure('flying-mass'), from.figure('sink-speed')),
  },
];
