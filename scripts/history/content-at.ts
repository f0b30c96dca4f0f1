import { spawn } from 'node:child_process';
import { mkdir, open, symlink, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { UsageError } from '../terminal/command-line.ts';
import { git, gitEnvironment, gitOptions } from './git.ts';

/** One file of a commit. */
interface TreeItem {
  readonly mode: string;
  readonly object: string;
  readonly bytes: number;
  /** Relative to the content folder, with `/`. */
  readonly path: string;
}

/** A larger file is too large for whatever reads it; its size is all that is kept of it. */
const mostBytes = 32 * 1024 * 1024;
const plainFile = /^100/;

/** The whole hash of a commit by any of its names; null where there is none. */
export async function commitNamed(content: string, name: string): Promise<string | null> {
  const told = await git(content, 'rev-parse', '--verify', '--quiet', '--end-of-options', `${name}^{commit}`);
  return told?.trim() ?? null;
}

/**
 * Writes the content folder as a commit has it into a folder that is there and empty. Files come out byte by byte: no
 * filter, no line ends and no attribute of the repository has a say. What is no plain file comes out as a link to the
 * folder it stands in, which nothing follows.
 */
export async function writeContentAt(content: string, commit: string, to: string): Promise<void> {
  const items = await treeOf(content, commit);
  const files = items.filter(({ mode }) => plainFile.test(mode));
  for (const { path } of items) await mkdir(dirname(join(to, path)), { recursive: true });
  for (const { path, bytes } of files.filter((file) => file.bytes > mostBytes))
    await hollow(join(to, path), bytes);
  await writeObjects(
    content,
    files.filter((file) => file.bytes <= mostBytes),
    to,
  );
  // Last, so that no file is ever written through one of them.
  for (const { mode, path } of items) if (!plainFile.test(mode)) await symlink('.', join(to, path));
}

/** The files of the content folder in a commit; none where it has no such folder. */
async function treeOf(content: string, commit: string): Promise<readonly TreeItem[]> {
  const tree = await git(content, 'rev-parse', '--verify', '--quiet', '--end-of-options', `${commit}:./`);
  if (tree === null) return [];
  const listed = await git(content, 'ls-tree', '--full-tree', '-r', '-l', '-z', tree.trim());
  if (listed === null) throw lacking(`commit ${commit.slice(0, 10)}`);
  return listed.split('\0').flatMap((line): TreeItem[] => {
    const [, mode = '', object = '', bytes = '', path = ''] =
      /^(\d+) \w+ ([0-9a-f]+) +(\d+|-|BAD)\t([\s\S]+)$/.exec(line) ?? [];
    if (bytes === 'BAD') throw lacking(path);
    // No such name can be written by git add; nothing is written outside the folder for one that was made otherwise.
    const steps = path.split('/');
    const safe =
      path !== '' && steps.every((step) => !['', '.', '..'].includes(step) && !/[\\\0]/.test(step));
    return safe ? [{ mode, object, bytes: Number(bytes) || 0, path }] : [];
  });
}

async function hollow(path: string, bytes: number): Promise<void> {
  const file = await open(path, 'wx');
  await file.truncate(bytes);
  await file.close();
}

/**
 * Asks one git for all objects in turn; each answer is a line that names it and its size, the bytes, and a line's end.
 * Throws a UsageError where the repository lacks one, as a clone of only some files does.
 */
async function writeObjects(content: string, files: readonly TreeItem[], to: string): Promise<void> {
  if (files.length === 0) return;
  const child = spawn('git', [...gitOptions, 'cat-file', '--batch'], {
    cwd: content,
    env: gitEnvironment(),
    stdio: ['pipe', 'pipe', 'ignore'],
  });
  // A git that ended early is missed below, by the answers it did not give.
  child.stdin.on('error', () => {});
  child.stdin.end(files.map(({ object }) => `${object}\n`).join(''));
  let chunks: Buffer[] = [];
  let length = 0;
  let next = 0;
  for await (const chunk of child.stdout) {
    chunks.push(chunk as Buffer);
    length += (chunk as Buffer).length;
    if (length < answerTo(files[next])) continue;
    let kept = Buffer.concat(chunks);
    for (let file = files[next]; file !== undefined && kept.length >= answerTo(file); file = files[next]) {
      const start = answerTo(file) - file.bytes - 1;
      if (kept.subarray(0, start).toString('latin1') !== headOf(file)) break;
      await writeFile(join(to, file.path), kept.subarray(start, start + file.bytes), { flag: 'wx' });
      kept = kept.subarray(answerTo(file));
      next += 1;
    }
    chunks = [kept];
    length = kept.length;
  }
  const missed = files[next];
  if (missed !== undefined) throw lacking(missed.path);
}

function lacking(what: string): UsageError {
  return new UsageError(
    `The repository does not hold all of ${what}. Fetch its whole history, or compare two folders with --base-content.`,
  );
}

function headOf({ object, bytes }: TreeItem): string {
  return `${object} blob ${bytes}\n`;
}

/** How many bytes git answers with. */
function answerTo(file: TreeItem | undefined): number {
  return file === undefined ? 0 : headOf(file).length + file.bytes + 1;
}
