import type { Path } from '../../entries/source/source.ts';

/**
 * The fields that are asked for first, without the places in lists: with them an aircraft can be drawn and its rubber
 * weighed up. What else there is to tell is folded beside them.
 */
const inSight: ReadonlySet<string> = new Set([
  'builder.handle',
  'builder.name',
  'builder.club',
  'builder.junior',
  'onboard',
  'origin',
  'wing.area',
  'wing.chord',
  'wing.panels',
  'wing.panels.sweep',
  'wing.panels.dihedral',
  'tailplane',
  'tailplane.span',
  'tailplane.area',
  'tailplane.arm',
  'fin',
  'fin.area',
  'fin.arm',
  'balance',
  'mass',
  'mass.airframe',
  'mass.flying',
  'motors.skein',
  'motors.skein.strip',
  'motors.skein.strands',
  'motors.skein.length',
  'motors.skein.mass',
  'motors.skein.batch',
  'motors.propeller',
  'motors.propeller.diameter',
  'motors.propeller.pitch',
  'flights.time',
  'flights.watches',
  'flights.timed-by',
  'flights.timekeepers',
  'flights.evidence',
  'flights.turns',
  'flights.weather',
  'flights.weather.wind',
  'flights.weather.temperature',
  'flights.changed',
  'setups.change',
  'glides.date',
  'glides.height',
  'glides.distance',
  'glides.time',
  'trim.turn',
  'trim.down-thrust',
  'trim.side-thrust',
  'trim.warps',
]);

/** Whether a field is shown at once, and not among what there is besides. */
export function isInSight(path: Path, required: boolean): boolean {
  return required || inSight.has(path.filter((step) => typeof step === 'string').join('.'));
}
