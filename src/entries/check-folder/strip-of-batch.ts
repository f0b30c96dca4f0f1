import type { Batch } from '../../model/batch.ts';
import type { Entry } from '../../model/entry.ts';
import type { Understood } from '../folder/content.ts';
import { fieldName } from '../problems/field-name.ts';
import { problemAt } from '../problems/make-problem.ts';
import type { Problem } from '../problems/problem.ts';
import { pathOfSetup } from '../source/path-of-setup.ts';
import type { FolderCheck } from './folder-check.ts';

/** Strip of one batch varies by less than this share of its size; common practice, no source. */
const tolerance = 0.1;

/** What of the folder the check looks at. */
interface Looked {
  readonly entries: readonly Understood<Entry>[];
  readonly batches: readonly { readonly value: Pick<Batch, 'id' | 'strip'> }[];
}

/** A skein's own strip is about that of the batch it was cut from. */
export const stripOfBatch = {
  code: 'strip-differs',
  scope: 'entry',
  check({ entries, batches }: Looked): Problem[] {
    const strips = new Map(batches.map(({ value }) => [value.id, value.strip]));
    return entries.flatMap(({ value, source }) =>
      value.setups.flatMap((setup, place): Problem[] => {
        if (place > 0 && !setup.overrides.some((path) => path.split('.')[0] === 'motors')) return [];
        return setup.design.motors.flatMap(({ skein }, motor) => {
          const cutFrom = strips.get(skein?.batch ?? '');
          const { strip } = skein ?? {};
          if (strip == null || cutFrom == null) return [];
          return (['width', 'thickness'] as const).flatMap((key): Problem[] => {
            const [own, of] = [strip[key], cutFrom[key]];
            const apart = Math.abs(own.value - of.value) / Math.max(own.value, of.value);
            if (apart <= tolerance) return [];
            const path = [...pathOfSetup(source, setup.id), 'motors', motor, 'skein', 'strip', key];
            return [
              problemAt(source, path, 'value', 'strip-differs', {
                message: `${fieldName(source, path)} is "${own.written}", but the strip of batch ${skein?.batch} is "${of.written}": ${Math.round(100 * apart)} % apart. Measure again, leave \`strip\` out where it is that of the batch, or name the batch it was cut from.`,
                found: own.written,
                accepted: `about ${of.written}`,
              }),
            ];
          });
        });
      }),
    );
  },
} satisfies FolderCheck;
