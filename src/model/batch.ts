import type { Quantity } from '../quantities/quantity.ts';
import type { Strip } from './design.ts';

/** A point of a stretch test, in the order measured: out, then back. */
export interface StretchPoint {
  /** Stretched length over unstretched length. */
  readonly ratio: number;
  /** Newton. */
  readonly force: number;
}

export interface StretchTest {
  readonly file: string;
  /** Unstretched length between the marks. */
  readonly length: Quantity;
  readonly mass: Quantity;
  readonly temperature: Quantity | null;
  readonly cycle: number | null;
  readonly broke: boolean;
  readonly by: string | null;
  readonly date: string | null;
  /** Null where the log could not be read; the problem says why. */
  readonly points: readonly StretchPoint[] | null;
  /** Relative calibration uncertainty of the force, from the log's header or the default. */
  readonly calibration: number;
}

/** A point of a torque test or torque log, unwinding: turns still in, torque in N·m. */
export interface TorquePoint {
  readonly turns: number;
  readonly torque: number;
}

export interface TorqueTest {
  readonly file: string;
  readonly strands: number | null;
  readonly length: Quantity;
  readonly mass: Quantity;
  readonly cycle: number | null;
  readonly points: readonly TorquePoint[] | null;
  readonly calibration: number;
}

/** A batch of rubber strip and its tests. */
export interface Batch {
  readonly id: string;
  readonly label: string;
  readonly strip: Strip | null;
  readonly density: Quantity | null;
  readonly made: string | null;
  readonly stretchTests: readonly StretchTest[];
  readonly torqueTests: readonly TorqueTest[];
  readonly formerly: readonly string[];
  readonly body: string;
}
