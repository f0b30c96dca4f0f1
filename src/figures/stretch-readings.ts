import type { Batch, StretchTest } from '../model/batch.ts';
import { type StretchCurve, stretchCurve } from '../rubber/stretch-energy.ts';
import { readCalibration } from './calibration.ts';
import type { Reader } from './definition.ts';
import { scatter } from './scatter.ts';

/** A stretch test whose log could be read. */
export interface ReadStretchTest {
  readonly test: StretchTest;
  readonly curve: StretchCurve;
}

/** A batch's stretch tests that have a curve. */
export function stretchTestsOf(from: Reader, batch: Batch): readonly ReadStretchTest[] {
  return from.once(batch.stretchTests, () =>
    batch.stretchTests.flatMap((test) => {
      const curve = test.points === null ? null : stretchCurve(test.points);
      return curve === null ? [] : [{ test, curve }];
    }),
  );
}

/** Those that came back from the longest stretch too. */
export function returnedTestsOf(from: Reader, batch: Batch): readonly ReadStretchTest[] {
  return stretchTestsOf(from, batch).filter(({ curve }) => curve.back.length > 0);
}

/**
 * What tests say in J/kg: for each, its work in N (∫F dλ, from `work`) times its unstretched length over its mass. One test
 * carries its own length, mass and calibration as base inputs. Of several it is their mean, and their sample deviation,
 * never below the largest uncertainty of a single one, is the uncertainty: the next skein is one more.
 */
export function readTestEnergy(
  from: Reader,
  batch: Batch,
  tests: readonly ReadStretchTest[],
  work: (test: ReadStretchTest) => number,
): number {
  const [only] = tests;
  if (only !== undefined && tests.length === 1) {
    const { test } = only;
    const calibration = readCalibration(from, test, test.file);
    const length = from.value(test.length, `the length of the strand in ${test.file}`);
    const mass = from.value(test.mass, `the mass of the strand in ${test.file}`);
    return (work(only) * calibration * length) / mass;
  }
  const values = tests.map((each) => (work(each) * each.test.length.value) / each.test.mass.value);
  const single = tests.map(({ test }, index) => Math.abs(values[index]!) * relativeU(test));
  return readMeanOfTests(from, batch, values, Math.max(...single));
}

/** Mean of what several tests say; their scatter, at least `floor`, is shared by all that rests on these tests. */
export function readMeanOfTests(
  from: Reader,
  batch: Batch,
  values: readonly number[],
  floor: number,
  what: 'stretch' | 'torque' = 'stretch',
): number {
  const { mean, deviation } = scatter(values);
  if (values.length === 1) return mean;
  const error = from.derived(batch, `the scatter of the ${what} tests of ${batch.label}`, () => ({
    kind: 'number',
    value: 0,
    u: 1,
    origin: 'logged',
  }));
  return mean + Math.max(deviation, floor) * error;
}

/** Relative standard uncertainty of one test's energy from its length, mass and calibration. */
function relativeU({ length, mass, calibration }: StretchTest): number {
  return Math.hypot(length.u / length.value, mass.u / mass.value, calibration);
}
