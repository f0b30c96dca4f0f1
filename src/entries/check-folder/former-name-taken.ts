import type { Understood } from '../folder/content.ts';
import type { Gathered } from '../folder/gathered.ts';
import { problemAt } from '../problems/make-problem.ts';
import type { Problem } from '../problems/problem.ts';
import { locate } from '../source/locate.ts';
import type { FolderCheck } from './folder-check.ts';

export const formerNameTaken: FolderCheck = {
  code: 'former-name-taken',
  scope: 'site',
  check: (content) => neighbourhoods(content).flatMap(taken),
};

interface Named {
  readonly name: string;
  readonly formerly: readonly string[];
  readonly source: Understood<unknown>['source'];
}

/** Files whose names stand in the same place of an address. */
function neighbourhoods(content: Gathered): Named[][] {
  const of = <Thing extends { readonly formerly: readonly string[] }>(
    files: readonly Understood<Thing>[],
    nameOf: (thing: Thing) => string,
  ): Named[] => files.map(({ value, source }) => ({ name: nameOf(value), formerly: value.formerly, source }));
  const byChallenge = Object.values(Object.groupBy(content.entries, ({ value }) => value.challenge));
  return [
    of(content.pages, ({ id }) => id),
    of(content.builders, ({ handle }) => handle),
    of(content.challenges, ({ id }) => id),
    of(content.batches, ({ id }) => id),
    of(content.news, ({ id }) => id),
    ...byChallenge.map((entries) => of(entries ?? [], ({ id }) => id)),
  ];
}

function taken(files: readonly Named[]): Problem[] {
  const owners = new Map(files.map(({ name, source }) => [name, locate(source, [], 'value')]));
  const problems: Problem[] = [];
  for (const { formerly, source } of files)
    for (const [index, old] of formerly.entries()) {
      const owner = owners.get(old);
      const here = locate(source, ['formerly', index], 'value');
      if (owner === undefined) owners.set(old, here);
      else
        problems.push(
          problemAt(source, ['formerly', index], 'value', 'former-name-taken', {
            message: `The old name "${old}" already leads to ${owner.file}: an address leads to one place only.`,
            found: old,
            accepted: 'a name that is not in use',
            related: { ...owner, message: `"${old}" belongs here.` },
          }),
        );
    }
  return problems;
}
