import { stretchAtShare } from '../rubber/stretch-energy.ts';
import { energyFrom } from '../rubber/torque-log.ts';
import { breakTurnsOfTest } from '../rubber/torque-test.ts';
import type { Reader } from './definition.ts';
import { type ReadTorqueLog, readTorqueLogOf } from './log-readings.ts';
import { batchOf, readDensity, readSkeinMass } from './skein-readings.ts';
import { readBreakStretch, workOfStretch } from './stretch-model.ts';
import type { NumberedMotor, Subject } from './subject.ts';
import { hasTorqueTest, readFromTorqueTests } from './torque-test-readings.ts';
import type { Winding } from './winding.ts';

/** J/kg of the motor's own torque log: 2π∫Q dn from the turns wound down to slack, over the mass of the skein. */
export function fromTorqueLog(
  from: Reader,
  subject: Subject,
  motor: NumberedMotor,
  winding: Winding,
): number | null {
  const log = readTorqueLogOf(from, subject, motor);
  if (log === null) return null;
  const energy = log.calibration * energyFrom(log.curve, turnsOnLog(from, log, winding));
  return energy / readSkeinMass(from, subject, motor);
}

/** The turns from which a torque log is read: those wound; the log's own top where nobody says how many, or more. */
export function turnsOnLog(from: Reader, { curve, file }: ReadTorqueLog, winding: Winding): number {
  const turns = winding.turns();
  if (turns === null) from.note(`the flight states no turns: the log ${file} is taken from its top`);
  else if (turns > curve.top)
    from.note(
      `the log ${file} goes to ${Number(curve.top.toPrecision(4))} turns only, and is taken from there`,
    );
  return Math.min(turns ?? curve.top, curve.top);
}

/** J/kg of the batch's torque test: e_test at the share of its break turns it went to, scaled by W(λ(x))/W(λ(x_test)). */
export function fromTorqueTests(
  from: Reader,
  subject: Subject,
  motor: NumberedMotor,
  winding: Winding,
): number | null {
  const batch = batchOf(subject, motor);
  if (batch === null || !hasTorqueTest(from, batch)) return null;
  const breakStretch = readBreakStretch(from, batch);
  const work = workOfStretch(from, batch);
  const wound = work(stretchAtShare(winding.share(), breakStretch));
  const constant = from.assume('turns-constant');
  const density = readDensity(from, subject, motor);
  return readFromTorqueTests(from, batch, (curve, measures) => {
    const share = curve.top / breakTurnsOfTest(constant, density, measures);
    const energy = (measures.calibration * energyFrom(curve, curve.top)) / measures.mass;
    return (energy * wound) / work(stretchAtShare(share, breakStretch));
  });
}
