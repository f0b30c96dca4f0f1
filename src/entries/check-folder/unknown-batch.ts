import type { There } from '../folder/gathered.ts';
import { batchesNamed } from '../folder/references.ts';
import { didYouMean } from '../problems/did-you-mean.ts';
import { problemOver } from '../problems/make-problem.ts';
import type { Problem } from '../problems/problem.ts';
import type { SourceDocument } from '../source/source.ts';
import type { FolderCheck } from './folder-check.ts';

/** What of the folder the check looks at. */
interface Looked {
  readonly entries: readonly { readonly source: SourceDocument }[];
  readonly there: Pick<There, 'batches'>;
}

/** A motor names a batch of rubber that is described. */
export const unknownBatch = {
  code: 'unknown-batch',
  scope: 'entry',
  check: ({ entries, there }: Looked): Problem[] =>
    entries.flatMap(({ source }) =>
      batchesNamed(source).flatMap(({ name, node }): Problem[] => {
        if (there.batches.has(name)) return [];
        const near = didYouMean(name, there.batches);
        const hint = near === null ? '' : ` Did you mean "${near}"?`;
        const message = `There is no batch of rubber "${name}": rubber/${name}.md is missing, and the motor is reckoned with usual rubber.${hint}`;
        const accepted =
          there.batches.size === 0 ? 'the name of a file in rubber/' : [...there.batches].join(', ');
        return [
          problemOver(source, node.start, node.end, 'unknown-batch', {
            message,
            found: name,
            accepted,
            suggestion: near,
          }),
        ];
      }),
    ),
} satisfies FolderCheck;
