import type { Kind } from '../quantities/quantity.ts';
import type { FigureDefinition } from './definition.ts';
import type { FigureUnit } from './figure.ts';

const kinds: Readonly<Record<FigureUnit, Kind>> = {
  '1': 'number',
  m: 'length',
  m2: 'area',
  rad: 'angle',
  kg: 'mass',
  'kg/m': 'mass-per-length',
  N: 'force',
  'N.m': 'torque',
  'N.s': 'impulse',
  'N/m2': 'loading',
  J: 'energy',
  'J/kg': 'specific-energy',
  W: 'power',
  s: 'time',
  's/kg': 'time-per-mass',
  'm/s': 'speed',
  turns: 'turns',
};

/** The kind of quantity that a figure in this unit is. */
export function kindOfUnit(unit: FigureUnit): Kind {
  return kinds[unit];
}

/** The kind in which people write and read a figure: by its unit, unless it says that it is a share. */
export function kindOfFigure(definition: FigureDefinition): Kind {
  return definition.kind ?? kindOfUnit(definition.unit);
}
