import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { call } from './called.ts';
import { writeSmallClub } from './small-club.ts';

const demo = resolve(import.meta.dirname, '../../content');
let folder = '';
const compare = (...args: string[]) =>
  call('compare-rules', ['--content', folder, '--now', '2027-06-01', ...args]);

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'last-turn-compare-'));
  await writeSmallClub(folder);
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe('compare-rules', () => {
  it('prints the table as it stands and a line for each variant', async () => {
    const { code, out, error } = await compare('summer', '--provisional', 'ranked', '--method', 'sum:2');
    expect({ code, error }).toEqual({ code: 0, error: '' });
    expect(out).toBe(
      'Summer: 0 with a place under the rules as they are\n\n' +
        'method=sum:2        nobody moves\n' +
        'provisional=ranked  2 move: lantern no place → 1, moth no place → 1; lantern, moth share place 1\n',
    );
  });

  it('prints the whole table under one variant', async () => {
    const { code, out } = await compare('summer', '--variant', 'provisional=ranked');
    expect(code).toBe(0);
    expect(out).toContain('   1  lantern  48.3 s  had no place\n   1  moth  48.3 s  had no place\n');
  });

  it('prints JSON and nothing else', async () => {
    const { code, out, error } = await compare('summer', '--format', 'json', '--provisional', 'ranked');
    expect({ code, error }).toEqual({ code: 0, error: '' });
    const { variants, ...rest } = JSON.parse(out);
    expect(rest).toEqual({ format: 1, challenge: 'summer', frozen: false, board: [] });
    expect(variants[0].moved).toEqual([
      { entry: 'lantern', before: null, after: 1 },
      { entry: 'moth', before: null, after: 1 },
    ]);
  });

  it('says of a final challenge that its result is frozen', async () => {
    const { code, out } = await call('compare-rules', [
      'slow-thread-2025',
      ...['--content', demo, '--now', '2026-11-25', '--round', 'down'],
    ]);
    expect(code).toBe(0);
    expect(out).toContain('The result of this challenge is frozen. What follows is what would have been');
  });
});

describe('compare-rules used wrongly', () => {
  it('ends with 1 for a challenge that is not there, and offers the nearest', async () => {
    const { code, error } = await compare('sumer');
    expect({ code, error }).toEqual({
      code: 1,
      error: 'There is no challenge "sumer" that can be read; there is summer. Did you mean "summer"?\n',
    });
  });

  it.each([
    [[], 'takes one challenge'],
    [['summer', '--method', 'sum'], '--method does not know "sum"'],
    [['summer', '--variant', 'method=median'], 'There is no variant "method=median" here; there is method='],
  ])('ends with 2 for %j', async (args, sentence) => {
    const { code, out, error } = await compare(...args);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(error).toContain(sentence);
  });
});
