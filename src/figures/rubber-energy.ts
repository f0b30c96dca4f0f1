import { stretchAtShare } from '../rubber/stretch-energy.ts';
import { treloarEnergy } from '../rubber/treloar.ts';
import type { Reader } from './definition.ts';
import { batchOf } from './skein-readings.ts';
import { readBreakStretch, workTo } from './stretch-model.ts';
import { readTestEnergy, returnedTestsOf } from './stretch-readings.ts';
import type { NumberedMotor, Subject } from './subject.ts';
import { fromTorqueLog, fromTorqueTests } from './torque-energy.ts';
import { type Winding, windingAtLaunch } from './winding.ts';

/** One way to know what the rubber gives back, J/kg from a winding down to slack; null where it does not apply. */
type EnergySource = (from: Reader, subject: Subject, motor: NumberedMotor, winding: Winding) => number | null;

/** In the order in which they are taken: what was measured on the motor itself before its batch, before rubber in general. */
const sources: readonly EnergySource[] = [
  fromTorqueLog,
  fromTorqueTests,
  fromStretchTests,
  fromRubberInGeneral,
];

/** A test to less than this stretch says little about rubber wound hard. */
const farEnough = 6;

/** Energy a motor's rubber gives back per mass at launch, J/kg. */
export function readEnergyOfRubber(from: Reader, subject: Subject, motor: NumberedMotor): number {
  return readEnergyOfWinding(from, subject, motor, windingAtLaunch(from, subject, motor));
}

/** Energy a motor's rubber gives back per mass from a winding down to slack, J/kg, from the first source that applies. */
export function readEnergyOfWinding(
  from: Reader,
  subject: Subject,
  motor: NumberedMotor,
  winding: Winding,
): number {
  for (const source of sources) {
    const energy = source(from, subject, motor, winding);
    if (energy !== null) return energy;
  }
  return from.absent('needs a test of the rubber');
}

/** e(x) = e_out·W(λ(x))/W(λ_test), W of the batch's way back; beyond λ_test it goes on as Treloar's curve does. */
function fromStretchTests(
  from: Reader,
  subject: Subject,
  motor: NumberedMotor,
  { share }: Winding,
): number | null {
  const batch = batchOf(subject, motor);
  const tests = batch === null ? [] : returnedTestsOf(from, batch);
  if (batch === null || tests.length === 0) return null;
  const stretch = stretchAtShare(share(), readBreakStretch(from, batch));
  for (const { test, curve } of tests)
    if (curve.top < farEnough)
      from.note(
        `the stretch test ${test.file} goes to ${Number(curve.top.toPrecision(3))} times its length only`,
      );
  return readTestEnergy(from, batch, tests, ({ curve }) => workTo(curve, stretch));
}

/** e(x) = e_break·W(λ(x))/W(λ_b), W of Treloar 1944. */
function fromRubberInGeneral(
  from: Reader,
  _subject: Subject,
  _motor: NumberedMotor,
  { share }: Winding,
): number {
  const breakStretch = from.assume('break-stretch');
  const stretch = stretchAtShare(share(), breakStretch);
  return (from.assume('break-energy') * treloarEnergy(stretch)) / treloarEnergy(breakStretch);
}
