import type { BuilderReference, Entry, Photo, Setup } from '../../model/entry.ts';
import { entryChecks } from '../check/entry-checks.ts';
import type { Misplaced } from '../problems/issues-to-problems.ts';
import type { Problem } from '../problems/problem.ts';
import { notForSetups, entry as schema } from '../schema/entry.ts';
import type { SourceDocument, SourceNode } from '../source/source.ts';
import { type DesignFields, understandDesign } from './design.ts';
import { readFields } from './draft.ts';
import { understandFlight, understandGlide } from './flight.ts';
import { designsOf, type EntryFields } from './setup-designs.ts';

const misplaced: Misplaced = new Map([['setups', notForSetups]]);

/**
 * What an entry means, in SI, with its setups laid over each other. The entry is null where anything is wrong with it;
 * every mistake of the file is among the problems, and warnings are too.
 */
export function understandEntry(
  source: SourceDocument,
  address: { readonly challenge: string; readonly id: string },
): { readonly entry: Entry | null; readonly problems: readonly Problem[] } {
  const { complete, draft, problems } = readFields(source, schema, misplaced);
  const all = [...problems, ...entryChecks.flatMap((check) => check(draft, source))];
  if (complete === null || all.some(({ severity }) => severity === 'error'))
    return { entry: null, problems: all };
  return { entry: toEntry(complete, source, address), problems: all };
}

function toEntry(
  fields: EntryFields,
  source: SourceDocument,
  { challenge, id }: { readonly challenge: string; readonly id: string },
): Entry {
  return {
    challenge,
    id,
    name: fields.name,
    builders: fields.builder.map(toBuilder),
    entered: fields.entered ?? null,
    photos: photosOf(fields),
    setups: setupsOf(fields, source),
    glides: (fields.glides ?? []).map(understandGlide),
    flights: (fields.flights ?? []).map(understandFlight).sort((a, b) => a.number - b.number),
    withdrawn:
      fields.withdrawn === undefined
        ? null
        : { date: fields.withdrawn.date ?? null, reason: fields.withdrawn.reason ?? null },
    also: fields.also ?? [],
    formerly: fields.formerly ?? [],
    body: source.body,
  };
}

function toBuilder(written: EntryFields['builder'][number]): BuilderReference {
  if (typeof written === 'string') return { handle: written, name: null, club: null, junior: false };
  const { handle, name, club, junior } = written;
  return { handle, name: name ?? null, club: club ?? null, junior: junior ?? false };
}

// A setup's photos show that setup; those of the setups before it stay worth seeing.
function photosOf(fields: EntryFields): Photo[] {
  const all = [fields, ...(fields.setups ?? [])].flatMap(({ photos }) => photos ?? []);
  return all.filter((photo, index) => all.findIndex(({ file }) => file === photo.file) === index);
}

function setupsOf(fields: EntryFields, source: SourceDocument): Entry['setups'] {
  const [, ...later] = designsOf(fields);
  const first: Setup = {
    id: null,
    from: null,
    change: null,
    design: understandDesign(fields),
    overrides: [],
  };
  const list = source.root.pairs.find(({ key }) => key.text === 'setups')?.value;
  return [
    first,
    ...later.flatMap(({ index, design }): Setup[] => {
      const written = fields.setups?.[index ?? 0];
      if (written === undefined) return [];
      return [
        {
          id: written.id,
          from: written.from,
          change: written.change ?? null,
          // Laid over a whole design, a setup leaves a whole design.
          design: understandDesign(design as DesignFields),
          overrides: overridesOf(list?.kind === 'list' ? list.items[index ?? 0] : undefined, []),
        },
      ];
    }),
  ];
}

const notDesign: ReadonlySet<string> = new Set(['id', 'from', 'change']);

/** Dotted paths of the values a setup writes: through maps, but not into lists. */
function overridesOf(node: SourceNode | undefined, above: readonly string[]): string[] {
  if (node?.kind !== 'map') return above.length === 0 ? [] : [above.join('.')];
  return node.pairs
    .filter(({ key }) => above.length > 0 || !notDesign.has(key.text))
    .flatMap(({ key, value }) => overridesOf(value, [...above, key.text]));
}
