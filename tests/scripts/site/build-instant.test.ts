import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { buildInstant } from '../../../scripts/site/build-instant.ts';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'last-turn-instant-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

describe('the moment of a build', () => {
  it('is the one given, in UTC', async () => {
    expect(await buildInstant('2027-05-02T08:00:00Z', folder, {})).toBe('2027-05-02T08:00:00Z');
    expect(await buildInstant('2027-05-02T08:00+02:00', folder, {})).toBe('2027-05-02T06:00:00Z');
    expect(await buildInstant('2027-05-02', folder, {})).toBe('2027-05-02T00:00:00Z');
  });

  it.each(['yesterday', '2027-02-30', '2027-05-02T08:00:00', '2027-13-01', '2027-05-02T25:00Z', ''])(
    'is not %j',
    async (text) => {
      await expect(buildInstant(text, folder, {})).rejects.toThrow(
        `The option --now takes a date or a moment with its offset, such as 2027-05-02 or 2027-05-02T08:00:00Z, but "${text}" was given.`,
      );
    },
  );

  // https://reproducible-builds.org/specs/source-date-epoch/: whole seconds since 1970-01-01T00:00:00Z; 1000000000 s
  // is 2001-09-09T01:46:40Z (a date often printed).
  it('is else SOURCE_DATE_EPOCH', async () => {
    expect(await buildInstant(undefined, folder, { SOURCE_DATE_EPOCH: '1000000000' })).toBe(
      '2001-09-09T01:46:40Z',
    );
    await expect(buildInstant(undefined, folder, { SOURCE_DATE_EPOCH: 'soon' })).rejects.toThrow(
      'SOURCE_DATE_EPOCH',
    );
  });

  it('is else the last commit of that folder, and else an error that asks for it', async () => {
    await expect(buildInstant(undefined, folder, {})).rejects.toThrow('Say it with --now');
    const git = (...args: string[]) =>
      execFileSync('git', ['-c', 'user.name=t', '-c', 'user.email=t@t.example', ...args], {
        cwd: folder,
        env: { ...process.env, GIT_COMMITTER_DATE: '2027-05-02T10:00:00+0200' },
      });
    git('init', '-q');
    writeFileSync(join(folder, 'site.md'), 'x');
    git('add', '.');
    git('commit', '-qm', 'x');
    expect(await buildInstant(undefined, folder, {})).toBe('2027-05-02T08:00:00Z');
  });
});
