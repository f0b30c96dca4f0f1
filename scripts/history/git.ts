import { execFile } from 'node:child_process';
import { promisify } from 'node:util';

const run = promisify(execFile);
const mostBytes = 256 * 1024 * 1024;

/**
 * What stands in front of every command: nothing that a repository's own settings name is run, nothing is fetched.
 */
export const gitOptions: readonly string[] = [
  ...['core.quotepath=off', 'core.fsmonitor=false', 'core.hooksPath=/dev/null', 'protocol.allow=never'],
  ...['log.showSignature=false', 'log.mailmap=false'],
].flatMap((setting) => ['-c', setting]);

/**
 * The surroundings of every command: nothing fetched, no lock taken, no question asked. The settings of the machine's owner
 * hold: they say which repositories may be read at all.
 */
export function gitEnvironment(): NodeJS.ProcessEnv {
  return {
    ...process.env,
    GIT_NO_LAZY_FETCH: '1',
    GIT_OPTIONAL_LOCKS: '0',
    GIT_TERMINAL_PROMPT: '0',
  };
}

/** What git says in a folder; null where there is no git, no repository or no such thing. */
export async function git(folder: string, ...args: readonly string[]): Promise<string | null> {
  try {
    const { stdout } = await run('git', [...gitOptions, ...args], {
      cwd: folder,
      env: gitEnvironment(),
      maxBuffer: mostBytes,
    });
    return stdout;
  } catch {
    return null;
  }
}
