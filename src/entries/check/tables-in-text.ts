import type { Root } from 'mdast';
import { remark } from 'remark';
import remarkGfm from 'remark-gfm';
import { visit } from 'unist-util-visit';
import { problemOver } from '../problems/make-problem.ts';
import type { Problem } from '../problems/problem.ts';
import type { SourceDocument } from '../source/source.ts';

const markdown = remark().use(remarkGfm).freeze();
/** A row with a bar, then the row of hyphens that makes it the head of a table. */
const head = /^(?=[^\n]*\|)([^\n]*)\n(?=[^\n]*-)([ \t|:-]+)\r?$/m;
const everyHead = new RegExp(head, 'gm');
/** What matters has been said after this many. */
const most = 20;

/** A table whose head and row of hyphens have not the same number of cells is shown as a line of bars instead. */
export function checkTablesInText(source: SourceDocument): Problem[] {
  const { body, bodyStart } = source;
  // Reading Markdown takes longer than all other checks together: only a text with a pair of rows that differ is read.
  const tree = [...body.matchAll(everyHead)].some(([, first = '', hyphens = '']) => differ(first, hyphens))
    ? treeOf(body)
    : null;
  if (tree === null) return [];
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

/** Null for a text nested so deeply that the stack does not hold it; such a text is shown as it was written. */
function treeOf(body: string): Root | null {
  try {
    return markdown.parse(body);
  } catch (fault) {
    if (fault instanceof RangeError) return null;
    throw fault;
  }
}
