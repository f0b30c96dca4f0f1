import { readFile, realpath } from 'node:fs/promises';
import { join } from 'node:path';
import { generatorVersion } from '../../folders/generator-version.ts';
import { projectFolder } from '../../folders/project-folder.ts';
import { git } from '../../history/git.ts';
import { UsageError } from '../../terminal/command-line.ts';
import { printable } from '../../terminal/printable.ts';

/** Where a club's folder fetches the generator, and which version of it. */
export interface GeneratorSource {
  /** Null where nobody has said it, and where the generator was copied from a folder of one machine. */
  readonly address: string | null;
  /** The tag of this version where it has one here, else the commit. */
  readonly version: string;
}

/**
 * The address given, else where this copy of the generator came from, else the one in its package.json.
 * Throws a UsageError for an address that cannot be fetched from.
 */
export async function generatorSource(given: string | undefined): Promise<GeneratorSource> {
  const tag = `v${await generatorVersion()}`;
  const own = await isOwnRepository();
  const version = own ? await versionIn(projectFolder, tag) : tag;
  if (given !== undefined) {
    const address = addressGiven(given);
    if (address !== null) return { address, version };
    throw new UsageError(
      `The option --generator takes the web address of a repository, such as https://code.example/tools/last-turn, but "${printable(given)}" was given.`,
    );
  }
  const origin = own ? await git(projectFolder, 'config', '--get', 'remote.origin.url') : null;
  return { address: fetchAddress(origin ?? '') ?? (await addressInPackage()), version };
}

/** An address somebody types: one of the web, or a folder of this machine as `file://`; null where it is neither. */
export function addressGiven(typed: string): string | null {
  return /^file:/i.test(typed) ? plain(typed) : fetchAddress(typed);
}

/** The tag where the commit that is checked out carries it, else the whole commit; the tag where there is none yet. */
export async function versionIn(folder: string, tag: string): Promise<string> {
  const tags = (await git(folder, 'tag', '--points-at', 'HEAD')) ?? '';
  if (tags.split('\n').includes(tag)) return tag;
  return (await git(folder, 'rev-parse', '--verify', 'HEAD'))?.trim() || tag;
}

/**
 * The web address of a repository, without the name and password that may stand in it; an address for ssh becomes the one anybody
 * can fetch from. Null for anything else.
 */
export function fetchAddress(written: string): string | null {
  const text = written.trim().replace(/^git\+/, '');
  const ssh =
    /^ssh:\/\/(?:[^@/\s]+@)?([^:/\s]+)(?::\d+)?\/(.+)$/.exec(text) ?? /^[\w.-]+@([^:/\s]+):(.+)$/.exec(text);
  return plain(ssh === null ? text : `https://${ssh[1]}/${ssh[2]}`, ['https:', 'http:']);
}

/** An address in letters that mean nothing to a shell; null where there are others. */
function plain(text: string, protocols: readonly string[] = ['file:']): string | null {
  if (!URL.canParse(text)) return null;
  const { protocol, host, pathname } = new URL(text);
  const address = `${protocol}//${host}${pathname}`;
  const isPlain = protocols.includes(protocol) && /^[\w.:/@%+~-]+$/.test(address);
  return isPlain && pathname !== '/' ? address : null;
}

/** Whether the project is a repository of its own, rather than a folder in somebody else's. */
async function isOwnRepository(): Promise<boolean> {
  const top = (await git(projectFolder, 'rev-parse', '--show-toplevel'))?.trim();
  return top !== undefined && (await realpath(top)) === (await realpath(projectFolder));
}

async function addressInPackage(): Promise<string | null> {
  const { repository } = JSON.parse(await readFile(join(projectFolder, 'package.json'), 'utf8')) as {
    repository?: string | { url?: string };
  };
  return fetchAddress((typeof repository === 'object' ? repository.url : repository) ?? '');
}
