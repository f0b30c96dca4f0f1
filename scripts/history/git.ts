import { execFile } from 'node:child_process';
import { promisify } from 'node:util';

const run = promisify(execFile);
const mostBytes = 256 * 1024 * 1024;

/** What git says in a folder; null where there is no git, no repository or no such thing. */
export async function git(folder: string, ...args: readonly string[]): Promise<string | null> {
  try {
    const { stdout } = await run('git', ['-c', 'core.quotepath=off', ...args], {
      cwd: folder,
      maxBuffer: mostBytes,
    });
    return stdout;
  } catch {
    return null;
  }
}
