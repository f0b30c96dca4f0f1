import { fieldName } from '../problems/field-name.ts';
import { problemAt } from '../problems/make-problem.ts';
import { designsOf } from '../understand/setup-designs.ts';
import type { EntryCheck } from './entry-check.ts';

/** A loop folded over and over has an even number of strands; an odd one is possible, but mostly a slip. */
export const checkEvenStrands: EntryCheck = (draft, source) =>
  designsOf(draft)
    .filter(({ wrote }) => wrote('motors'))
    .flatMap(({ design, at }) =>
      (design.motors ?? []).flatMap((motor, index) => {
        const strands = motor?.skein?.strands;
        if (strands === undefined || strands % 2 === 0 || strands === 1) return [];
        const path = [...at('motors'), index, 'skein', 'strands'];
        return [
          problemAt(source, path, 'value', 'odd-strands', {
            message: `${fieldName(source, path)} is ${strands}, and a skein made of a loop has an even number: ${strands - 1} or ${strands + 1}. Count them again; leave it where an odd one was meant.`,
            found: String(strands),
          }),
        ];
      }),
    );
