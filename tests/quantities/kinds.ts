import type { Kind } from '../../src/quantities/quantity.ts';

const every: Readonly<Record<Kind, true>> = {
  number: true,
  length: true,
  area: true,
  mass: true,
  force: true,
  torque: true,
  time: true,
  speed: true,
  angle: true,
  temperature: true,
  pressure: true,
  'specific-energy': true,
  loading: true,
  density: true,
  share: true,
  turns: true,
  impulse: true,
  energy: true,
  power: true,
  'mass-per-length': true,
  'time-per-mass': true,
};

/** All kinds; the compiler sees to it that none is left out. */
export const kinds = Object.keys(every) as Kind[];
