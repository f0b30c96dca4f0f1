import type { TorquePoint } from './batch.ts';

/** A point of a thrust log: seconds, and newton of one motor. */
export interface ThrustPoint {
  readonly time: number;
  readonly thrust: number;
}

/** The thrust of one motor, the model held still. */
export interface ThrustLog {
  /** Two or more; the time never goes back. */
  readonly points: readonly ThrustPoint[];
  /** Relative standard uncertainty of the thrust, one factor for the whole log. */
  readonly calibration: number;
}

/** The torque of one motor, from wound to slack. */
export interface TorqueLog {
  /** Two or more; the turns never go up. */
  readonly points: readonly TorquePoint[];
  /** Relative standard uncertainty of the torque, one factor for the whole log. */
  readonly calibration: number;
}

/** The bench logs of an entry that could be read, by their file names. */
export interface BenchLogs {
  readonly thrust: ReadonlyMap<string, ThrustLog>;
  readonly torque: ReadonlyMap<string, TorqueLog>;
}
