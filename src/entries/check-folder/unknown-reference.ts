import type { Understood } from '../folder/content.ts';
import type { Gathered } from '../folder/gathered.ts';
import { didYouMean } from '../problems/did-you-mean.ts';
import { problemAt } from '../problems/make-problem.ts';
import type { Problem } from '../problems/problem.ts';
import type { Path } from '../source/source.ts';
import type { FolderCheck } from './folder-check.ts';

export const unknownReference: FolderCheck = {
  code: 'unknown-reference',
  scope: 'site',
  check(content) {
    const { site, news, there } = content;
    const challenge = (file: Understood<unknown>, path: Path, name: string | null) =>
      missing(file, path, name, 'challenge', there.challenges);
    return [
      ...(site === null ? [] : challenge(site, ['featured'], site.value.featured)),
      ...news.flatMap((post) => challenge(post, ['challenge'], post.value.challenge)),
      ...unknownElsewhere(content),
    ];
  },
};

/** Entries of the same aircraft in other challenges. After twenty the cause is a renamed folder and no slip. */
function unknownElsewhere({ entries, there }: Gathered): Problem[] {
  return entries
    .flatMap((entry) => entry.value.also.map((other, index) => ({ entry, other, index })))
    .filter(({ other }) => !there.entries.has(other))
    .flatMap(({ entry, other, index }, count) =>
      missing(entry, ['also', index], other, 'entry', count < 20 ? there.entries : new Set()),
    );
}

function missing(
  { source }: Understood<unknown>,
  path: Path,
  name: string | null,
  what: 'challenge' | 'entry',
  known: ReadonlySet<string>,
): Problem[] {
  if (name === null || known.has(name)) return [];
  const near = didYouMean(name, known);
  const hint = near === null ? '' : ` Did you mean "${near}"?`;
  return [
    problemAt(source, path, 'value', 'unknown-reference', {
      message: `\`${path[0]}\` names the ${what} "${name}", which does not exist.${hint}`,
      found: name,
      accepted: what === 'entry' ? 'challenge/entry, as in the address of its page' : [...known].join(', '),
      suggestion: near,
    }),
  ];
}
