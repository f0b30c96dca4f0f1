import type { Batch } from '../model/batch.ts';
import { type StretchCurve, workBack } from '../rubber/stretch-energy.ts';
import { treloarEnergy } from '../rubber/treloar.ts';
import type { Reader } from './definition.ts';
import { scatter } from './scatter.ts';
import { returnedTestsOf, stretchTestsOf } from './stretch-readings.ts';

/** Stretch at which the batch breaks: of the tests that went to the break, else the default. */
export function readBreakStretch(from: Reader, batch: Batch): number {
  const broken = stretchTestsOf(from, batch).filter(({ test }) => test.broke);
  if (broken.length === 0) return from.assume('break-stretch');
  return from.derived(batch, `the stretch at which ${batch.label} broke`, () => {
    const { mean, deviation } = scatter(broken.map(({ curve }) => curve.top));
    return { kind: 'number', value: mean, u: deviation, origin: 'logged' };
  });
}

/** Work of a test's way back up to a stretch, in N; beyond the test's top it goes on as Treloar's curve does. */
export function workTo(curve: StretchCurve, stretch: number): number {
  if (stretch <= curve.top) return workBack(curve, stretch);
  return (workBack(curve) * treloarEnergy(stretch)) / treloarEnergy(curve.top);
}

/**
 * W(λ) of a batch, up to a factor that cancels in a ratio: of its way back where it has a stretch test, else of Treloar
 * 1944. The uncertainty of the tests cancels with it.
 */
export function workOfStretch(from: Reader, batch: Batch): (stretch: number) => number {
  const tests = returnedTestsOf(from, batch);
  if (tests.length === 0) return treloarEnergy;
  return (stretch) =>
    tests.reduce(
      (sum, { test, curve }) => sum + (workTo(curve, stretch) * test.length.value) / test.mass.value,
      0,
    );
}
