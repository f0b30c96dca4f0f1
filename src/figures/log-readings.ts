import type { LogReference } from '../model/design.ts';
import { runTime, type ThrustRun, thrustRun } from '../rubber/thrust-log.ts';
import { type TorqueCurve, torqueCurve } from '../rubber/torque-log.ts';
import { readCalibration } from './calibration.ts';
import type { Reader } from './definition.ts';
import type { NumberedMotor, Subject } from './subject.ts';

/** A motor's thrust log, taken apart. */
export interface ReadThrustRun {
  readonly run: ThrustRun;
  /** 1 with the uncertainty of the rig; everything in the log's force is multiplied by it. */
  readonly calibration: number;
  /** s. */
  readonly runTime: number;
  readonly reference: LogReference;
}

/** A drift of less than this share of the peak is what any rig has. */
const muchDrift = 0.05;

/** The run in a motor's thrust log; the figure is absent without one. */
export function readThrustRun(from: Reader, subject: Subject, motor: NumberedMotor): ReadThrustRun {
  const reference = motor.motor.thrustLog;
  if (reference === null) return from.absent(`needs a thrust log${motor.suffix}`);
  const { file } = reference;
  const log = subject.logs.thrust.get(file);
  if (log === undefined) return from.absent(`needs the thrust log ${file} in a form that can be read`);
  const { run } = from.once(log, () => ({ run: thrustRun(log.points) }));
  if (run === null) return from.absent(`the log ${file} shows no thrust`);
  remarkOnRun(from, file, run);
  const step = from.derived(log, `the time between readings in ${file}`, () => ({
    kind: 'time',
    value: 0,
    // The motor starts and stops somewhere between two readings.
    u: run.timeStep / 2 / Math.sqrt(3),
    origin: 'logged',
  }));
  return { run, calibration: readCalibration(from, log, file), runTime: runTime(run) + step, reference };
}

/** A motor's torque log as a curve. */
export interface ReadTorqueLog {
  readonly curve: TorqueCurve;
  readonly calibration: number;
  readonly file: string;
}

/** A motor's torque log; null where it has none that can be used. */
export function readTorqueLogOf(from: Reader, subject: Subject, motor: NumberedMotor): ReadTorqueLog | null {
  const file = motor.motor.torqueLog?.file;
  const log = file === undefined ? undefined : subject.logs.torque.get(file);
  if (file === undefined || log === undefined) return null;
  const { curve } = from.once(log, () => ({ curve: torqueCurve(log.points) }));
  if (curve === null) return null;
  if (curve.end > 0)
    from.note(`the log ${file} ends with ${Number(curve.end.toPrecision(3))} turns still in`);
  return { curve, calibration: readCalibration(from, log, file), file };
}

function remarkOnRun(from: Reader, file: string, { drift, noDrift, peak, cutOff }: ThrustRun): void {
  if (noDrift === 'uneven end')
    from.note(`no drift was taken off ${file}: its last readings lie too far apart`);
  if (noDrift === 'nothing would be left') from.note(`no drift was taken off ${file}: it ends as it runs`);
  if (Math.abs(drift) > muchDrift * peak)
    from.note(
      `at its end the log ${file} reads ${Math.round((100 * drift) / peak)} % of its peak, which was taken for drift`,
    );
  if (cutOff.start) from.note(`the log ${file} begins with the motor running`);
  if (cutOff.end) from.note(`the log ${file} ends with the motor running`);
}
