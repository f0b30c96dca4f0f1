import type { FileHistory } from '../../src/almanac/awaiting/handles-by-others.ts';
import type { HandedIn } from '../../src/almanac/review/history.ts';
import { commitsOf } from './commits.ts';
import { git } from './git.ts';
import { filesOf } from './past-of.ts';

/** What the history tells of the commits from one to another: when they were handed in, and whose files they change. */
export async function handedInBetween(
  content: string,
  base: string,
  head: string,
): Promise<Omit<HandedIn, 'author'>> {
  const [before, fresh] = await Promise.all([
    commitsOf(content, false, base),
    commitsOf(content, false, `${base}..${head}`),
  ]);
  const outside = await outsideBetween(content, base, head);
  if (before === null || fresh === null) return { on: null, files: null, byOthers: [], outside };
  const known = new Map(filesOf(before).map((one) => [one.file, one]));
  return {
    // A commit says of itself when it was made: it cannot be older than what it was made from.
    on:
      fresh.length === 0
        ? null
        : ([...fresh, ...before.slice(-1)]
            .map(({ date }) => date)
            .sort()
            .at(-1) ?? null),
    files: filesOf([...before, ...fresh]),
    byOthers: filesOf(fresh)
      .filter((one) => writtenByOthers(known.get(one.file), one))
      .map(({ file }) => file),
    outside,
  };
}

/** Changed files of the repository that are not of the content folder. */
async function outsideBetween(content: string, base: string, head: string): Promise<readonly string[]> {
  const [own, told] = await Promise.all([
    git(content, 'rev-parse', '--show-prefix'),
    git(content, 'diff', '--no-ext-diff', '--no-textconv', '--no-renames', '--name-only', '-z', base, head),
  ]);
  if (own === null || told === null) return [];
  const prefix = own.trimEnd();
  return prefix === '' ? [] : told.split('\0').filter((file) => file !== '' && !file.startsWith(prefix));
}

/** Only a look: a commit's author is whatever its writer says. */
function writtenByOthers(before: FileHistory | undefined, now: FileHistory): boolean {
  return before !== undefined && [...now.authors].every((author) => !before.authors.has(author));
}
