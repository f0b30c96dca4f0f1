import type { BuilderReference, Entry } from '../model/entry.ts';
import type { Builder } from '../model/site.ts';

/** Those who have a file of their own, by handle. */
export function buildersOnFile(files: readonly { readonly value: Builder }[]): ReadonlyMap<string, Builder> {
  return new Map(files.map(({ value }) => [value.handle, value]));
}

/**
 * The entry with its builders as the builders folder knows them: where a person has a file, the file is authoritative.
 * A junior goes by handle alone.
 */
export function withKnownBuilders(entry: Entry, known: ReadonlyMap<string, Builder>): Entry {
  return {
    ...entry,
    builders: entry.builders.map((reference) => asKnown(reference, known.get(reference.handle))),
  };
}

function asKnown(reference: BuilderReference, builder: Builder | undefined): BuilderReference {
  const { handle, name, club, junior } = builder ?? reference;
  return junior ? { handle, name: null, club: null, junior } : { handle, name, club, junior };
}

/**
 * Everybody who has a file or built something, by handle; a file is authoritative, else the first entry that names them. Those
 * whom only a final result still names keep their page, by handle alone.
 */
export function everyBuilder(
  entries: readonly Entry[],
  known: ReadonlyMap<string, Builder>,
  inResults: readonly string[],
): readonly Builder[] {
  const all = new Map<string, Builder>();
  for (const [handle, builder] of known)
    all.set(handle, builder.junior ? { ...builder, name: null, club: null, link: null } : builder);
  for (const { builders } of entries)
    for (const reference of builders)
      if (!all.has(reference.handle))
        all.set(reference.handle, { ...reference, link: null, formerly: [], body: '' });
  for (const handle of inResults)
    if (!all.has(handle))
      all.set(handle, { handle, name: null, club: null, junior: false, link: null, formerly: [], body: '' });
  return [...all.values()].sort((a, b) => (a.handle < b.handle ? -1 : 1));
}
