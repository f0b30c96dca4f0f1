import { git } from './git.ts';

export interface Commit {
  readonly hash: string;
  /** Address of its author. */
  readonly author: string;
  /** Calendar day of the commit, by its own clock. */
  readonly date: string;
  /** Files it touched, relative to the content folder. */
  readonly files: readonly string[];
}

const mark = '\u0001';

/**
 * The commits that touched a content folder, oldest first; null where it has no history. `mainline` takes what was merged
 * as one change on the day of the merge: from then on it was in force.
 *
 * @param range of commits, as git writes it; the whole history of what is checked out where none is given
 */
export async function commitsOf(
  content: string,
  mainline: boolean,
  range = 'HEAD',
): Promise<readonly Commit[] | null> {
  const told = await git(
    content,
    'log',
    '--reverse',
    '--topo-order',
    ...(mainline ? ['--first-parent', '-m'] : []),
    '--no-renames',
    '--relative',
    '--name-only',
    '-z',
    `--format=${mark}%H%x09%aE%x09%cI%x09`,
    '--end-of-options',
    range,
    '--',
    '.',
  );
  if (told === null) return null;
  return told
    .split(mark)
    .slice(1)
    .map((part) => {
      const [hash = '', author = '', date = '', ...rest] = part.split('\t');
      const files = rest
        .join('\t')
        .split('\0')
        .map((file) => file.replace(/^\n+/, ''))
        .filter((file) => file !== '');
      return { hash, author, date: date.slice(0, 10), files };
    });
}
