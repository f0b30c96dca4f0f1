/** What a thing is measured with: each has a least uncertainty, whatever the digits written. */
export type Floor =
  | 'span'
  | 'chord'
  | 'area'
  | 'arm'
  | 'balance'
  | 'mass'
  | 'strip'
  | 'skein-length'
  | 'propeller-diameter'
  | 'pitch'
  | 'break-turns'
  | 'angle';

/** Things of which none is nothing: what has no span, mass or pitch is not there, or was not measured. */
const aboveZero: readonly Floor[] = [
  'span',
  'area',
  'mass',
  'strip',
  'skein-length',
  'propeller-diameter',
  'pitch',
  'break-turns',
];

/** Whether such a thing may measure nothing, as a pointed tip has no chord. */
export function mayBeZero(floor: Floor | undefined): boolean {
  return floor === undefined || !aboveZero.includes(floor);
}

/** The larger of a share of the value and an absolute least value in SI. */
export interface LeastUncertainty {
  readonly share: number;
  readonly least: number;
}

/** Of everything but masses, whose least value hangs on the balance. */
export const floors: Readonly<Record<Exclude<Floor, 'mass'>, LeastUncertainty>> = {
  span: { share: 0.002, least: 0 },
  chord: { share: 0.01, least: 0 },
  area: { share: 0.02, least: 0 },
  arm: { share: 0.01, least: 0 },
  balance: { share: 0, least: 0.002 },
  strip: { share: 0.04, least: 0 },
  'skein-length': { share: 0.01, least: 0 },
  'propeller-diameter': { share: 0.01, least: 0 },
  pitch: { share: 0.05, least: 0 },
  'break-turns': { share: 0.05, least: 0 },
  angle: { share: 0, least: Math.PI / 180 },
};

/** Of masses: kg on a balance that shows whole or tenths of a gram, and on one that shows hundredths. */
export const massFloor = { share: 0.005, coarse: 1e-4, fine: 1e-5 };

/**
 * The least standard uncertainty of a value, SI: the accuracy of what such a thing is measured with (common practice,
 * no source). `resolution` is that of the digits written, SI: it tells a fine balance from a coarse one.
 */
export function floorOf(floor: Floor, value: number, resolution: number): number {
  const size = Math.abs(value);
  if (floor === 'mass') {
    const { share, coarse, fine } = massFloor;
    return Math.max(share * size, resolution <= fine * (1 + 1e-9) ? fine : coarse);
  }
  return Math.max(floors[floor].share * size, floors[floor].least);
}
