import type { Kind } from '../../quantities/quantity.ts';

/**
 * What each field of a flight holds, by its name in the file: a kind of quantity, a whole-number count, plain text, or
 * a map of such fields. A list holds what its items hold. `balance` is a length, or a share of the mean aerodynamic
 * chord where it is written so.
 */
export type FlightField =
  | Kind
  | 'count'
  | 'text'
  | 'balance'
  | { readonly [field: string]: Kind | 'count' | 'text' };

/** The one list of a flight's fields: the schema reads a flight by it, the seal writes one by it. */
export const flightFields = {
  number: 'count',
  date: 'text',
  watches: 'time',
  time: 'time',
  'timed-by': 'text',
  turns: 'turns',
  'wound-to': 'turns',
  'turns-left': 'turns',
  'launch-torque': 'torque',
  launch: 'text',
  'launch-height': 'length',
  drop: 'length',
  'motors-run': 'count',
  release: { how: 'text', stagger: 'time' },
  'motor-run': 'time',
  height: 'length',
  behaviour: 'text',
  ended: 'text',
  changed: 'text',
  damage: 'text',
  balance: 'balance',
  mass: 'mass',
  setup: 'text',
  round: 'text',
  weather: {
    wind: 'speed',
    temperature: 'temperature',
    pressure: 'pressure',
    humidity: 'share',
    elevation: 'length',
    surface: 'text',
  },
  rubber: { 'winds-before': 'count', 'stretched-to': 'number', temperature: 'temperature', wait: 'time' },
  timekeepers: 'text',
  flyer: 'text',
  evidence: 'text',
  note: 'text',
  withdrawn: 'text',
} as const satisfies Readonly<Record<string, FlightField>>;
