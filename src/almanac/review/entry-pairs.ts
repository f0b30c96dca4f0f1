import type { Place } from '../../entries/folder/classify-path.ts';
import type { ChangedFile } from './changed-files.ts';
import { renamedEntries } from './renamed-entries.ts';
import { type EntryOnSide, entriesOf, type Sides } from './side.ts';

/** One aircraft before and after; null on the side that has none of it that can be read. */
export interface EntryPair {
  readonly challenge: string;
  /** Of today where it was renamed. */
  readonly entry: string;
  readonly before: EntryOnSide | null;
  readonly after: EntryOnSide | null;
  /** Whether anything in its own folder is not the same. */
  readonly touched: boolean;
}

/**
 * The entries that a change may concern: those with a changed file in their folder, with a changed ruling, of a changed
 * challenge, or with rubber of a changed batch. Sorted by challenge and name.
 */
export function entryPairs(sides: Sides, files: readonly ChangedFile[]): readonly EntryPair[] {
  const [was, is] = [entriesOf(sides.before), entriesOf(sides.after)];
  const folders = namesOf(files, (place) =>
    place.kind === 'entry' || place.kind === 'entry-asset' ? `${place.challenge}/${place.id}` : null,
  );
  const ruled = namesOf(files, (place) =>
    place.kind === 'ruling' ? `${place.challenge}/${place.id}` : null,
  );
  const challenges = namesOf(files, (place) => (place.kind === 'challenge' ? place.id : null));
  const batches = namesOf(files, (place) => (place.kind === 'batch' ? place.id : null));
  const moved = renamedEntries(sides);
  const left = new Set(moved.values());
  return [...new Set([...was.keys(), ...is.keys(), ...folders])].sort().flatMap((key): EntryPair[] => {
    const after = is.get(key) ?? null;
    const before = was.get(moved.get(key) ?? key) ?? null;
    if (after === null && left.has(key)) return [];
    const [challenge = '', entry = ''] = key.split('/');
    const touched = folders.has(key) || folders.has(moved.get(key) ?? key);
    const rubber = [before, after].some(
      (side) => side !== null && batchesOf(side).some((id) => batches.has(id)),
    );
    if (!touched && !ruled.has(key) && !challenges.has(challenge) && !rubber) return [];
    return [{ challenge, entry, before, after, touched }];
  });
}

function namesOf(files: readonly ChangedFile[], name: (place: Place) => string | null): ReadonlySet<string> {
  return new Set(files.flatMap(({ place }) => name(place) ?? []));
}

function batchesOf({ read }: EntryOnSide): readonly string[] {
  return read.value.setups.flatMap(({ design }) => design.motors.flatMap(({ skein }) => skein?.batch ?? []));
}
