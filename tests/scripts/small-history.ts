import { execFileSync } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';

/** A repository of its own with a content folder in it, written commit by commit. Everybody in it is invented. */
export interface SmallHistory {
  readonly content: string;
  /** Asks git in the repository's folder. */
  readonly git: (...args: string[]) => string;
  readonly write: (file: string, text: string) => void;
  /** Takes over everything that lies on the disk, by an author, on a day. */
  readonly commit: (author: string, day: string) => void;
}

/** Begins a repository in an empty folder. */
export function smallHistory(folder: string): SmallHistory {
  const content = join(folder, 'content');
  mkdirSync(content, { recursive: true });
  const ask = (args: readonly string[], environment: Readonly<Record<string, string>>) =>
    execFileSync('git', args, {
      cwd: folder,
      encoding: 'utf8',
      env: { ...process.env, GIT_CONFIG_GLOBAL: '/dev/null', ...environment },
    });
  const git = (...args: string[]) => ask(args, {});
  git('init', '--quiet', '--initial-branch', 'main');
  return {
    content,
    git,
    write: (file, text) => {
      mkdirSync(dirname(join(content, file)), { recursive: true });
      writeFileSync(join(content, file), text);
    },
    commit: (author, day) => {
      const who = (role: string) => ({
        [`GIT_${role}_NAME`]: author,
        [`GIT_${role}_EMAIL`]: `${author}@club.example`,
        [`GIT_${role}_DATE`]: `${day}T12:00:00Z`,
      });
      git('add', '--all');
      ask(['commit', '--quiet', '--message', 'As it is'], { ...who('AUTHOR'), ...who('COMMITTER') });
    },
  };
}
