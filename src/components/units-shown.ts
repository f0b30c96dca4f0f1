import type { Kind } from '../quantities/quantity.ts';

/** Symbols of the units in which a value is shown, the metric and the imperial one. */
export interface UnitPair {
  readonly metric: string;
  readonly imperial: string;
}

/** Units for what a builder measures, by the size such a thing has. */
export const unitPairs = {
  span: { metric: 'm', imperial: 'in' },
  size: { metric: 'mm', imperial: 'in' },
  height: { metric: 'm', imperial: 'ft' },
  area: { metric: 'dm2', imperial: 'in2' },
  section: { metric: 'mm2', imperial: 'in2' },
  mass: { metric: 'g', imperial: 'oz' },
  angle: { metric: '°', imperial: '°' },
  share: { metric: '%', imperial: '%' },
  time: { metric: 's', imperial: 's' },
  turns: { metric: 'turns', imperial: 'turns' },
  torque: { metric: 'N·mm', imperial: 'ozf·in' },
  force: { metric: 'N', imperial: 'ozf' },
  wind: { metric: 'm/s', imperial: 'mph' },
  temperature: { metric: '°C', imperial: '°F' },
  pressure: { metric: 'hPa', imperial: 'inHg' },
  density: { metric: 'g/cm3', imperial: 'g/cm3' },
  loading: { metric: 'g/dm2', imperial: 'oz/ft2' },
  specificEnergy: { metric: 'J/g', imperial: 'ft·lbf/lb' },
  speed: { metric: 'm/s', imperial: 'ft/s' },
  energy: { metric: 'J', imperial: 'ft·lbf' },
  power: { metric: 'W', imperial: 'W' },
  impulse: { metric: 'N·s', imperial: 'N·s' },
  massPerLength: { metric: 'g/mm', imperial: 'oz/in' },
  timePerMass: { metric: 's/g', imperial: 's/oz' },
  plain: { metric: '1', imperial: '1' },
} as const satisfies Record<string, UnitPair>;

const byKind: Readonly<Record<Kind, UnitPair>> = {
  number: unitPairs.plain,
  length: unitPairs.size,
  area: unitPairs.area,
  mass: unitPairs.mass,
  force: unitPairs.force,
  torque: unitPairs.torque,
  time: unitPairs.time,
  speed: unitPairs.speed,
  angle: unitPairs.angle,
  temperature: unitPairs.temperature,
  pressure: unitPairs.pressure,
  'specific-energy': unitPairs.specificEnergy,
  loading: unitPairs.loading,
  density: unitPairs.density,
  share: unitPairs.share,
  turns: unitPairs.turns,
  impulse: unitPairs.impulse,
  energy: unitPairs.energy,
  power: unitPairs.power,
  'mass-per-length': unitPairs.massPerLength,
  'time-per-mass': unitPairs.timePerMass,
};

const byFigure: Readonly<Record<string, UnitPair>> = {
  span: unitPairs.span,
  'skein-section': unitPairs.section,
  'energy-height': unitPairs.height,
};

/** The units in which a value is shown of which nothing but its kind is known. */
export function unitsOfKind(kind: Kind): UnitPair {
  return byKind[kind];
}

/** The units in which a figure is shown; those of its kind unless the figure itself is of another size. */
export function unitsOfFigure(id: string, kind: Kind): UnitPair {
  return byFigure[id] ?? byKind[kind];
}
