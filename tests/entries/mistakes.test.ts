import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { readContent } from '../../src/entries/folder/read-folder.ts';
import { byPlace } from '../../src/entries/problems/problem.ts';
import { problemCodes } from '../../src/entries/problems/problem-codes.ts';

// `content` holds one of each kind of mistake, most of them in an entry that is named after its code. `expected.json` was
// made by marking the place of each mistake in its text, not from what the reader says.
const folder = resolve(import.meta.dirname, '../cases/mistakes');

interface Expected {
  readonly file: string;
  readonly line: number;
  readonly column: number;
  readonly code: string;
}

/** Codes that no folder of small files can show on every computer, or that would take the whole site away. */
const elsewhere = new Set([
  'unreadable-file',
  'final-result-differs',
  'unreadable-folder',
  'file-too-large',
  'front-matter-too-large',
  'photo-large',
  'photo-too-large',
  'log-too-long',
  'link-not-followed',
  'name-taken',
  'site-file-missing',
  'not-a-mail-address',
  'not-a-colour',
  'more-mistakes',
  'more-doubts',
  'too-many-items',
  // These need verdicts or figures: tests/almanac.
  'flight-does-not-count',
  'flight-in-future',
  'acceptance-lapsed',
  'skein-mass-differs',
  'turns-above-break',
  'turns-near-break',
  'photo-twice',
  'also-differs',
  'wing-loading-improbable',
  'balance-beside-wing',
  'balance-behind-neutral-point',
  'glide-beyond-ideal',
  'time-above-ceiling',
  'time-above-prediction',
]);

describe('a folder with one of each kind of mistake', async () => {
  const content = await readContent(resolve(folder, 'content'));
  const expected: Expected[] = JSON.parse(readFileSync(resolve(folder, 'expected.json'), 'utf8'));

  it('has each of them found, once, at its place', () => {
    const found = content.problems.map(({ file, line, column, code }) => ({ file, line, column, code }));
    expect(found).toEqual(expected);
  });

  it('shows every code there is', () => {
    const shown = new Set(expected.map(({ code }) => code));
    expect(Object.keys(problemCodes).filter((code) => !shown.has(code) && !elsewhere.has(code))).toEqual([]);
    expect([...elsewhere].filter((code) => shown.has(code))).toEqual([]);
  });

  it('gives its problems in the order of all printers', () => {
    expect([...content.problems].sort(byPlace)).toEqual(content.problems);
  });

  it('says each in whole sentences, and never offers what was found', () => {
    for (const { message, code, found, suggestion } of content.problems) {
      expect([code, message]).toEqual([code, expect.stringMatching(/[.?!]`?$/)]);
      expect([code, message]).not.toEqual([code, expect.stringMatching(/undefined|null|NaN|\[object/)]);
      if (suggestion !== null) expect([code, suggestion]).not.toEqual([code, found]);
    }
  });

  it('still has what is right', () => {
    const right = content.entries.map(({ value }) => value.id);
    expect(right).toContain('plover');
    expect(right).toContain('improbable-value');
    expect(right).toContain('photo-missing');
    expect(right).not.toContain('missing-unit');
    expect(content.leftOut).toContainEqual({ challenge: 'long-haul-2027', entry: 'missing-unit' });
  });

  it('accounts for every file', () => {
    const fates = content.files.map(({ fate }) => fate);
    expect(fates.length).toBe(new Set(content.files.map(({ file }) => file)).size);
    expect(fates).toContain('left-out');
  });
});
