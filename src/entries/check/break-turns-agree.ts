import type { Quantity } from '../../quantities/quantity.ts';
import { fieldName } from '../problems/field-name.ts';
import { problemAt } from '../problems/make-problem.ts';
import { designsOf } from '../understand/setup-designs.ts';
import type { EntryCheck } from './entry-check.ts';

/** Skeins like each other break at turns nearer to each other than this factor; common practice, no source. */
const furthest = 1.6;

/** The tests in a list of break turns tell of skeins like each other. */
export const checkBreakTurnsAgree: EntryCheck = (draft, source) =>
  designsOf(draft)
    .filter(({ wrote }) => wrote('motors'))
    .flatMap(({ design, at }) =>
      (design.motors ?? []).flatMap((motor, index) => {
        const tests = (motor?.['break-turns'] ?? []).flatMap((test, place) =>
          test === null ? [] : [{ test, place }],
        );
        const middle = medianOf(tests.map(({ test }) => test));
        const apart = ({ test }: { readonly test: Quantity }) => Math.abs(Math.log(test.value / middle));
        const [outlier, ...others] = tests.toSorted((a, b) => apart(b) - apart(a));
        const values = tests.map(({ test }) => test.value);
        if (outlier === undefined || Math.max(...values) <= furthest * Math.min(...values)) return [];
        const path = [...at('motors'), index, 'break-turns', outlier.place];
        const beside = others
          .sort((a, b) => a.place - b.place)
          .map(({ test }) => `"${test.written}"`)
          .join(', ');
        return [
          problemAt(source, path, 'value', 'break-turns-apart', {
            message: `${fieldName(source, path)} is "${outlier.test.written}" beside ${beside}: skeins like each other seldom break more than a factor of ${furthest} apart. Correct it if it is a slip, and leave out a skein that was damaged or made otherwise.`,
            found: outlier.test.written,
          }),
        ];
      }),
    );

function medianOf(tests: readonly Quantity[]): number {
  const values = tests.map(({ value }) => value).sort((a, b) => a - b);
  const [low, high] = [values[(values.length - 1) >> 1] ?? 1, values[values.length >> 1] ?? 1];
  return (low + high) / 2;
}
