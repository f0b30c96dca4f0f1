import { fieldName } from '../problems/field-name.ts';
import { problemAt } from '../problems/make-problem.ts';
import { nodeAt } from '../source/locate.ts';
import { designsOf } from '../understand/setup-designs.ts';
import type { EntryCheck } from './entry-check.ts';

/** Of strip with strands, length and mass, a skein needs two to be reckoned with. A batch brings its own strip. */
export const checkSkeins: EntryCheck = (draft, source) =>
  designsOf(draft)
    .filter(({ wrote }) => wrote('motors'))
    .flatMap(({ design, at }) =>
      (design.motors ?? []).flatMap((motor, index) => {
        const skein = motor?.skein;
        if (skein === undefined) return [];
        const section = (skein.strip ?? skein.batch) !== undefined && skein.strands !== undefined;
        const given = [section, skein.length !== undefined, skein.mass !== undefined].filter(Boolean).length;
        if (given >= 2) return [];
        const path = [...at('motors'), index, 'skein'];
        // What is wrong with a field of the skein is told there; corrected, it may be all that is needed.
        const written = nodeAt(source, path);
        if (written?.kind === 'map' && written.pairs.some(({ key }) => !(key.text in skein))) return [];
        return [
          problemAt(source, path, 'key', 'skein-incomplete', {
            message: `${fieldName(source, path)}: too little is given to reckon with it. Write two of these: \`strip\` with \`strands\`, \`length\`, \`mass\`.`,
            accepted: 'two of strip with strands, length and mass',
          }),
        ];
      }),
    );
