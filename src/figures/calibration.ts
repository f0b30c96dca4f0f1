import type { Reader } from './definition.ts';

/** One factor for the force or torque of a whole log, 1 with the uncertainty of its rig: all integrals of the log share it. */
export function readCalibration(from: Reader, log: { readonly calibration: number }, file: string): number {
  return from.derived(log, `the calibration of ${file}`, () => ({
    kind: 'number',
    value: 1,
    u: log.calibration,
    origin: 'logged',
  }));
}
