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

/** The larger of a share of the value and an absolute least value in SI. */
const floors: Readonly<Record<Exclude<Floor, 'mass'>, { readonly share: number; readonly least: number }>> = {
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

const massShare = 0.005;
/** kg: a balance that shows whole or tenths of a gram, and one that shows hundredths. */
const coarseBalance = 1e-4;
const fineBalance = 1e-5;

/**
 * The least standard uncertainty of a value, SI: the accuracy of what such a thing is measured with (common practice,
 * no source). `resolution` is that of the digits written, SI: it tells a fine balance from a coarse one.
 */
export function floorOf(floor: Floor, value: number, resolution: number): number {
  const size = Math.abs(value);
  if (floor === 'mass') {
    const least = resolution <= fineBalance * (1 + 1e-9) ? fineBalance : coarseBalance;
    return Math.max(massShare * size, least);
  }
  return Math.max(floors[floor].share * size, floors[floor].least);
}
