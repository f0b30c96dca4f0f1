import { describe, expect, it } from 'vitest';
import { checkText } from '../../../src/entries/check/text-checks.ts';
import { readSource } from '../../../src/entries/source/read-source.ts';
import { splitPlain } from '../../../src/entries/source/split-plain.ts';

// GitHub Flavored Markdown, 4.10: "The header row must match the delimiter row in the number of cells. If not, a table
// will not be recognized."

const found = (body: string) => {
  const { source } = readSource('entry.md', `---\nname: Plover\n---\n${body}`, splitPlain);
  return checkText(source!, true).map(({ line, column, message }) => `${line}:${column} ${message}`);
};

describe('a table in a text', () => {
  it('is told where its row of hyphens is short, with the row to write', () => {
    expect(found('Trim:\n\n| Day | Turns | Time |\n|---|---|\n| 1 | 400 | 31 s |\n')).toEqual([
      '7:1 The table is shown as text with bars: its first row has 3 cells, but the row of hyphens below it has 2. Write it as `| --- | --- | --- |`.',
    ]);
    expect(found('Day | Turns\n---|---|---\n1 | 400\n')).toHaveLength(1);
  });

  it('is left alone where it is one, and where it is no table', () => {
    expect(found('| Day | Turns |\n|:---|---:|\n| 1 | 400 |\n')).toEqual([]);
    expect(found('```\n| Day | Turns |\n|---|\n```\n')).toEqual([]);
    expect(found('A | B\n---\n\nC\n')).toEqual([]);
  });
});
