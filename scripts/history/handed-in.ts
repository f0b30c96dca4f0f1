import type { FileHistory } from '../../src/almanac/awaiting/handles-by-others.ts';
import type { HandedIn } from '../../src/almanac/review/history.ts';
import { commitsOf } from './commits.ts';
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
  if (before === null || fresh === null) return { on: null, files: null, byOthers: [] };
  const known = new Map(filesOf(before).map((one) => [one.file, one]));
  return {
    on: fresh.at(-1)?.date ?? null,
    files: filesOf([...before, ...fresh]),
    byOthers: filesOf(fresh)
      .filter((one) => writtenByOthers(known.get(one.file), one))
      .map(({ file }) => file),
  };
}

/** Only a look: a commit's author is whatever its writer says. */
function writtenByOthers(before: FileHistory | undefined, now: FileHistory): boolean {
  return before !== undefined && [...now.authors].every((author) => !before.authors.has(author));
}
