import { execFileSync, spawnSync } from 'node:child_process';
import {
  chmodSync,
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

const seed = resolve(import.meta.dirname, '../../../scripts/new/site/seeds/common/generator.sh');
const folder = mkdtempSync(join(tmpdir(), 'last-turn-generator-'));
const source = join(folder, 'source');
const club = join(folder, 'our club');
const script = join(club, 'generator.sh');

const git = (...args: readonly string[]) =>
  execFileSync('git', ['-c', 'user.name=Otter', '-c', 'user.email=otter@example.org', ...args], {
    cwd: source,
    encoding: 'utf8',
  }).trim();
const release = (text: string, tag: string) => {
  writeFileSync(join(source, 'version.txt'), text);
  git('add', 'version.txt');
  git('commit', '--quiet', '--message', text);
  git('tag', tag);
  return git('rev-parse', 'HEAD');
};
const pin = (version: string, address = `file://${source}`) =>
  writeFileSync(
    script,
    readFileSync(seed, 'utf8')
      .replace(/^version=.*$/m, `version=${version}`)
      .replace(/^address=.*$/m, `address=${address}`),
  );
/** Runs it from another folder, with an `npm` that only says that it was called, and where. */
const run = () =>
  spawnSync('sh', [script], {
    cwd: folder,
    encoding: 'utf8',
    env: { ...process.env, PATH: `${join(folder, 'bin')}:${process.env.PATH}` },
  });
const fetched = () => readFileSync(join(club, 'generator/version.txt'), 'utf8');

beforeAll(() => {
  for (const each of [source, club, join(folder, 'bin')]) mkdirSync(each);
  writeFileSync(join(folder, 'bin/npm'), '#!/bin/sh\necho "npm $* in $(basename "$PWD")"\n');
  chmodSync(join(folder, 'bin/npm'), 0o755);
  git('init', '--quiet', '--initial-branch', 'main');
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

// One story, told in order: a club fetches a version, takes the next, and goes back.
describe('generator.sh', () => {
  let first = '';

  it('says what is missing where nobody has said where the generator lives', () => {
    cpSync(seed, script);
    const { status, stderr } = run();
    expect(status).toBe(1);
    expect(stderr).toContain('Write its repository behind address= and run this again.');
    expect(existsSync(join(club, 'generator'))).toBe(false);
  });

  it('fetches the version that is named and installs it beside itself', () => {
    first = release('one', 'v1.0.0');
    release('two', 'v2.0.0');
    pin('v1.0.0');
    const { status, stdout, stderr } = run();
    expect([status, stderr]).toEqual([0, '']);
    expect(stdout).toBe('npm ci in generator\n');
    expect(fetched()).toBe('one');
  });

  it('takes another version by one changed line, also one that came later', () => {
    release('three', 'v3.0.0');
    pin('v3.0.0');
    expect(run().status).toBe(0);
    expect(fetched()).toBe('three');
  });

  it('takes a commit as well as a tag, and goes back', () => {
    pin(first);
    expect(run().status).toBe(0);
    expect(fetched()).toBe('one');
  });

  it('stops at a version there is none of, before anything is installed', () => {
    pin('v9.0.0');
    const { status, stdout } = run();
    expect(status).not.toBe(0);
    expect(stdout).toBe('');
  });
});
