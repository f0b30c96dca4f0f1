import { execFileSync } from 'node:child_process';
import {
  lstatSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  readlinkSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { commitNamed, writeContentAt } from '../../../scripts/history/content-at.ts';
import { type SmallHistory, smallHistory } from '../small-history.ts';

// What must come out is what was committed, byte by byte; no source outside.

let folder: string;
let out: string;
let history: SmallHistory;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'content-at-'));
  out = join(folder, 'out');
  mkdirSync(out);
  history = smallHistory(join(folder, 'repository'));
});

afterEach(() => rmSync(folder, { recursive: true, force: true }));

describe('the content of a commit', () => {
  it('comes out byte by byte, whatever line ends the repository asks for', async () => {
    const bytes = Buffer.from(Array.from({ length: 70_000 }, (_, at) => at % 256));
    history.write('entries/a/b/entry.md', 'one\r\ntwo\n');
    writeFileSync(join(history.content, 'empty.md'), '');
    writeFileSync(join(history.content, 'picture.png'), bytes);
    history.commit('desk', '2027-05-01');
    writeFileSync(join(folder, 'repository/.gitattributes'), '* text eol=crlf\n');
    await writeContentAt(history.content, 'HEAD', out);
    expect(readFileSync(join(out, 'entries/a/b/entry.md'), 'utf8')).toBe('one\r\ntwo\n');
    expect(readFileSync(join(out, 'empty.md'), 'utf8')).toBe('');
    expect(readFileSync(join(out, 'picture.png')).equals(bytes)).toBe(true);
  });

  it('is that of the content folder and of nothing beside it', async () => {
    history.write('site.md', 'x');
    writeFileSync(join(folder, 'repository/beside.md'), 'y');
    history.commit('desk', '2027-05-01');
    await writeContentAt(history.content, 'HEAD', out);
    expect(readdirSync(out)).toEqual(['site.md']);
  });

  it('has links that lead nowhere in the place of links and of other repositories', async () => {
    history.write('site.md', 'x');
    symlinkSync('/etc/passwd', join(history.content, 'link.md'));
    history.commit('desk', '2027-05-01');
    const commit = history.git('rev-parse', 'HEAD').trim();
    history.git('update-index', '--add', '--cacheinfo', `160000,${commit},content/other`);
    const tree = history.git('write-tree').trim();
    await writeContentAt(history.content, treeAsCommit(tree), out);
    expect(readdirSync(out).sort()).toEqual(['link.md', 'other', 'site.md']);
    for (const name of ['link.md', 'other']) expect(readlinkSync(join(out, name))).toBe('.');
  });

  it('keeps of a file that is too large for any reader its size alone', async () => {
    const bytes = 33 * 1024 * 1024;
    history.write('huge.csv', 'x'.repeat(bytes));
    history.commit('desk', '2027-05-01');
    await writeContentAt(history.content, 'HEAD', out);
    expect(lstatSync(join(out, 'huge.csv')).size).toBe(bytes);
  });

  it('is asked for in a sentence where the repository lacks a part of it', async () => {
    history.write('site.md', 'x');
    history.commit('desk', '2027-05-01');
    const object = history.git('rev-parse', 'HEAD:content/site.md').trim();
    rmSync(join(folder, 'repository/.git/objects', object.slice(0, 2), object.slice(2)));
    await expect(writeContentAt(history.content, 'HEAD', out)).rejects.toThrow(/does not hold all of/);
  });

  it('is empty where the commit has no such folder', async () => {
    writeFileSync(join(folder, 'repository/beside.md'), 'y');
    history.commit('desk', '2027-05-01');
    await writeContentAt(history.content, 'HEAD', out);
    expect(readdirSync(out)).toEqual([]);
  });
});

describe('the name of a commit', () => {
  it('is never taken for an option', async () => {
    history.write('site.md', 'x');
    history.commit('desk', '2027-05-01');
    expect(await commitNamed(history.content, '--all')).toBeNull();
    expect(await commitNamed(history.content, 'main')).toMatch(/^[0-9a-f]{40}$/);
  });
});

function treeAsCommit(tree: string): string {
  const who = { GIT_AUTHOR_NAME: 'desk', GIT_AUTHOR_EMAIL: 'desk@club.example' };
  return execFileSync('git', ['commit-tree', tree, '-m', 'As it is'], {
    cwd: join(folder, 'repository'),
    encoding: 'utf8',
    env: { ...process.env, ...who, GIT_COMMITTER_NAME: 'desk', GIT_COMMITTER_EMAIL: 'desk@club.example' },
  }).trim();
}
