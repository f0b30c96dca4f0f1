import type { Root } from 'mdast';
import { visit } from 'unist-util-visit';
import { problemOver } from '../problems/make-problem.ts';
import type { Problem } from '../problems/problem.ts';
import type { SourceDocument } from '../source/source.ts';

/** A row with a bar, then the row of hyphens that makes it the head of a table. */
const head = /^(?=[^\n]*\|)([^\n]*)\n(?=[^\n]*-)([ \t|:-]+)\r?$/m;
const everyHead = new RegExp(head, 'gm');
/** What matters has been said after this many. */
const most = 20;

/** Whether a text holds a pair of rows that look like the head of a table and differ in their cells. */
export function mayHaveBrokenTables(body: string): boolean {
  return [...body.matchAll(everyHead)].some(([, first = '', hyphens = '']) => differ(first, hyphens));
}

/** A table whose head and row of hyphens have not the same number of cells is shown as a line of bars instead. */
export function tablesInText(source: SourceDocument, tree: Root): Problem[] {
  const { body, bodyStart } = source;
  const problems: Problem[] = [];
  visit(tree, 'paragraph', ({ position }) => {
    const start = position?.start.offset ?? 0;
    const found = head.exec(body.slice(start, position?.end.offset));
    const [, first = '', hyphens = ''] = found ?? [];
    if (found === null || !differ(first, hyphens) || problems.length === most) return;
    const [cells, groups] = [cellsOf(first), cellsOf(hyphens)];
    const at = bodyStart + start + found.index + first.length + 1;
    const row = `|${' --- |'.repeat(cells)}`;
    problems.push(
      problemOver(source, at, at + hyphens.trimEnd().length, 'table-not-read', {
        message: `The table is shown as text with bars: its first row has ${cells} cells, but the row of hyphens below it has ${groups}. Write it as \`${row}\`.`,
        found: hyphens.trim(),
        accepted: 'one group of hyphens for each cell of the first row',
        suggestion: row,
      }),
    );
  });
  return problems;
}

function differ(first: string, hyphens: string): boolean {
  return hyphens.includes('|') && cellsOf(first) !== cellsOf(hyphens);
}

function cellsOf(row: string): number {
  const bare = row
    .trim()
    .replace(/^\|/, '')
    .replace(/(?<!\\)\|$/, '');
  return bare.split(/(?<!\\)\|/).length;
}
