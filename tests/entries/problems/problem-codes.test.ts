import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { costOf, problemCodes } from '../../../src/entries/problems/problem-codes.ts';

const source = readdirSync('src', { recursive: true, withFileTypes: true })
  .filter((item) => item.isFile() && item.name.endsWith('.ts') && item.name !== 'problem-codes.ts')
  .map((item) => readFileSync(join(item.parentPath, item.name), 'utf8'))
  .join('\n');

describe('the list of codes', () => {
  it('holds no code that nothing reports', () => {
    expect(Object.keys(problemCodes).filter((code) => !source.includes(`'${code}'`))).toEqual([]);
  });

  it('is in kebab-case, each with a sentence of its own', () => {
    for (const [code, { means }] of Object.entries(problemCodes)) {
      expect(code).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
      expect(means).toMatch(/^[A-Z`].*\.$/);
    }
    const sentences = Object.values(problemCodes).map(({ means }) => means);
    expect(new Set(sentences).size).toBe(sentences.length);
  });

  it('takes only errors off the site', () => {
    for (const { severity, costs } of Object.values(problemCodes))
      if (costs !== 'nothing') expect(severity).toBe('error');
    expect(costOf('photo-missing')).toBe('photo');
    expect(costOf('toString')).toBe('file');
  });
});
