import { classifyPath, type Place } from '../../entries/folder/classify-path.ts';
import type { Sides } from './side.ts';

export type FileChange = 'added' | 'changed' | 'removed';

export interface ChangedFile {
  /** Relative to the content folder, with `/`. */
  readonly file: string;
  readonly change: FileChange;
  readonly place: Place;
}

/** Every file that is not the same on both sides, sorted. */
export function changedFiles({ before, after }: Sides): readonly ChangedFile[] {
  const all = [...new Set([...before.digests.keys(), ...after.digests.keys()])].sort();
  return all.flatMap((file) => {
    const [was, is] = [before.digests.get(file), after.digests.get(file)];
    if (was === is) return [];
    const change = was === undefined ? 'added' : is === undefined ? 'removed' : 'changed';
    return [{ file, change, place: classifyPath(file) }];
  });
}
