import { problemAt } from '../problems/make-problem.ts';
import type { Problem } from '../problems/problem.ts';
import { locate } from '../source/locate.ts';
import type { FolderCheck } from './folder-check.ts';

export const builderDiffers: FolderCheck = {
  code: 'builder-differs',
  scope: 'entry',
  check({ entries, builders }) {
    const byHandle = new Map(builders.map((builder) => [builder.value.handle, builder]));
    return entries.flatMap(({ value: entry, source }) =>
      entry.builders.flatMap((builder, index): Problem[] => {
        const known = byHandle.get(builder.handle);
        if (known === undefined) return [];
        return (['name', 'club'] as const).flatMap((field) => {
          const [here, there] = [builder[field], known.value[field]];
          if (here === null || there === null || here === there) return [];
          return [
            problemAt(source, ['builder', index, field], 'value', 'builder-differs', {
              message: `The ${field} of "${builder.handle}" is "${here}" here and "${there}" in the builder's own file, which is the one that counts.`,
              found: here,
              accepted: there,
              suggestion: there,
              related: {
                ...locate(known.source, [field], 'value'),
                message: `The builder's own file says "${there}".`,
              },
            }),
          ];
        });
      }),
    );
  },
};
