import type { Figure } from '../src/figures/figure.ts';
import type { TimeParts } from '../src/figures/time-parts.ts';

const absent = (id: string, unit: Figure['unit']): Figure => ({
  id,
  unit,
  absent: 'needs a flight that can count',
});

/** The parts of the time of an aircraft that did not fly, for almanacs written by hand. */
export const noTimeParts: TimeParts = {
  time: absent('flown-time', 's'),
  use: absent('flown-use', '1'),
  height: absent('flown-height', 'm'),
  sink: absent('flown-sink', 'm/s'),
};
