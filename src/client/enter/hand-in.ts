import type { EnterSite } from './site-data.ts';

/** Where the file of an entry stands in the repository. */
export function pathOfEntry(challenge: string, entry: string): string {
  return `content/entries/${challenge}/${entry}/entry.md`;
}

/** A page of a forge, and whether the text stands in it already. */
export interface ProposedFile {
  readonly address: string;
  readonly filled: boolean;
}

/** Longer addresses are refused by servers and browsers here and there; common practice, no source. */
const longestAddress = 6000;

/**
 * The page of the forge on which a file is proposed, with name and text filled in where the forge takes them and the
 * address stays short enough; or on which a file that is there is changed. Null without a repository.
 *
 * Addresses: GitHub `new/<branch>?filename=&value=` and Forgejo `_new/<branch>/?filename=&value=` as their documentation
 * and threads tell; GitLab `-/new/<branch>?file_name=`, which ignores a text.
 */
export function proposedFile(
  repository: EnterSite['repository'],
  path: string,
  text: string,
  isThere: boolean,
): ProposedFile | null {
  if (repository === null) return null;
  const root = repository.url.replace(/\/+$/, '');
  const branch = repository.branch.split('/').map(encodeURIComponent).join('/');
  const file = path.split('/').map(encodeURIComponent).join('/');
  const name = encodeURIComponent(path);
  if (isThere) return { address: `${root}/${edit[repository.kind]}/${branch}/${file}`, filled: false };
  if (repository.kind === 'gitlab')
    return { address: `${root}/-/new/${branch}?file_name=${name}`, filled: false };
  const empty =
    repository.kind === 'github'
      ? `${root}/new/${branch}?filename=${name}`
      : `${root}/_new/${branch}/?filename=${name}`;
  const filled = `${empty}&value=${encodeURIComponent(text)}`;
  return filled.length <= longestAddress
    ? { address: filled, filled: true }
    : { address: empty, filled: false };
}

const edit = { github: 'edit', gitlab: '-/edit', forgejo: '_edit' } as const;

/** The page of the forge on which pictures are put into the folder of an entry; null where there is none of that kind. */
export function uploadPage(repository: EnterSite['repository'], path: string): string | null {
  if (repository === null || repository.kind === 'gitlab') return null;
  const root = repository.url.replace(/\/+$/, '');
  const branch = repository.branch.split('/').map(encodeURIComponent).join('/');
  const folder = path.slice(0, path.lastIndexOf('/')).split('/').map(encodeURIComponent).join('/');
  return `${root}/${repository.kind === 'github' ? 'upload' : '_upload'}/${branch}/${folder}`;
}

/** Mail programs cut longer addresses; common practice, no source. */
const longestMail = 1800;

/** A mail with the text in it where it is short enough. */
export function mailTo(to: string, subject: string, text: string): { address: string; filled: boolean } {
  const empty = `mailto:${encodeURIComponent(to).replaceAll('%40', '@')}?subject=${encodeURIComponent(subject)}`;
  const filled = `${empty}&body=${encodeURIComponent(text.replace(/\r?\n/g, '\r\n'))}`;
  return filled.length <= longestMail ? { address: filled, filled: true } : { address: empty, filled: false };
}
