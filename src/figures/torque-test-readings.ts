import type { Batch, TorqueTest } from '../model/batch.ts';
import { type TorqueCurve, torqueCurve } from '../rubber/torque-log.ts';
import type { SkeinMeasures } from '../rubber/torque-test.ts';
import { readCalibration } from './calibration.ts';
import { centralChange } from './central-change.ts';
import type { Reader } from './definition.ts';
import { readMeanOfTests } from './stretch-readings.ts';

/** What one test's own measurements are; the calibration is a factor on its torque. */
export interface TestMeasures extends SkeinMeasures {
  readonly calibration: number;
}

/** What a test says of another skein, given its own measures; it may read everything but those. */
export type SaidByTest = (curve: TorqueCurve, measures: TestMeasures, test: TorqueTest) => number;

interface ReadTorqueTest {
  readonly test: TorqueTest;
  readonly curve: TorqueCurve;
}

/** True where a batch has a torque test that can be used. */
export function hasTorqueTest(from: Reader, batch: Batch): boolean {
  return torqueTestsOf(from, batch).length > 0;
}

/**
 * What a batch's torque tests say of a skein. One test carries its own length, mass and calibration as base inputs. Of several
 * it is their mean, and their sample deviation, never below the largest uncertainty of a single one, stands for these.
 * There must be one test at least.
 */
export function readFromTorqueTests(from: Reader, batch: Batch, said: SaidByTest): number {
  const tests = torqueTestsOf(from, batch);
  const [only] = tests;
  if (only !== undefined && tests.length === 1)
    return said(only.curve, readMeasures(from, only.test), only.test);
  const values = tests.map(({ test, curve }) => said(curve, measuresAsStated(test), test));
  const floor = Math.max(...tests.map((each) => ownUncertainty(each, said)));
  return readMeanOfTests(from, batch, values, floor, 'torque');
}

function torqueTestsOf(from: Reader, batch: Batch): readonly ReadTorqueTest[] {
  return from.once(batch.torqueTests, () =>
    batch.torqueTests.flatMap((test) => {
      const curve = test.points === null ? null : torqueCurve(test.points);
      return curve === null ? [] : [{ test, curve }];
    }),
  );
}

function readMeasures(from: Reader, test: TorqueTest): TestMeasures {
  return {
    calibration: readCalibration(from, test, test.file),
    length: from.value(test.length, `the length of the skein in ${test.file}`),
    mass: from.value(test.mass, `the mass of the skein in ${test.file}`),
  };
}

function measuresAsStated({ length, mass }: TorqueTest): TestMeasures {
  return { calibration: 1, length: length.value, mass: mass.value };
}

/** Standard uncertainty of what one test says, from its length, mass and calibration. */
function ownUncertainty({ test, curve }: ReadTorqueTest, said: SaidByTest): number {
  const stated = measuresAsStated(test);
  const middle = said(curve, stated, test);
  const changes = (
    [
      ['calibration', test.calibration],
      ['length', test.length.u],
      ['mass', test.mass.u],
    ] as const
  ).map(([key, u]) => {
    const moved = (by: number) => said(curve, { ...stated, [key]: stated[key] + by }, test);
    return centralChange(moved(u), middle, moved(-u)) ?? 0;
  });
  return Math.hypot(...changes);
}
