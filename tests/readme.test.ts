import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readAlmanac } from '../src/almanac/read-almanac.ts';

const readme = readFileSync(resolve(import.meta.dirname, '../README.md'), 'utf8');
const blocks = [...readme.matchAll(/```markdown\n([\s\S]*?)```/g)].map((match) => match[1] ?? '');

/** The files README.md tells a new organiser and a new builder to write, in its order. */
const files = ['site.md', 'challenges/summer-2027.md', 'entries/summer-2027/slow-lantern/entry.md'];

describe('the files that README.md shows', () => {
  const folder = mkdtempSync(join(tmpdir(), 'readme-'));

  beforeAll(() => {
    files.forEach((file, index) => {
      mkdirSync(dirname(join(folder, file)), { recursive: true });
      writeFileSync(join(folder, file), blocks[index] ?? '');
    });
  });

  afterAll(() => rmSync(folder, { recursive: true }));

  it('are three, each named in the text', () => {
    expect(blocks).toHaveLength(files.length);
    for (const file of files) expect(readme).toContain(file);
  });

  it('are checked with no problem at all', async () => {
    const almanac = await readAlmanac({
      content: folder,
      now: '2027-06-01T12:00:00Z',
    });
    expect(almanac.problems).toEqual([]);
  });

  it('give an open challenge with one entry and one flight that awaits a ruling', async () => {
    const { challenges } = await readAlmanac({
      content: folder,
      now: '2027-06-01T12:00:00Z',
    });
    expect(challenges.map(({ state }) => state)).toEqual(['open']);
    const flights = challenges[0]?.entries[0]?.flights.map(({ judged }) => [
      judged.official.seconds,
      judged.status,
    ]);
    // Mean of 48.31 and 48.52 is 48.415, rounded down to a tenth.
    expect(flights).toEqual([[48.4, 'provisional']]);
  });
});
