import type { Definition, Root } from 'mdast';
import { remark } from 'remark';
import remarkGfm from 'remark-gfm';
import { visit } from 'unist-util-visit';
import { markdownLimits, type TooMuch, tooMuchToRead } from './markdown-limits.ts';

/** A text as a tree; or what it has too much of, in which case it is shown as it was written. */
export type ReadMarkdown =
  | { readonly tree: Root; readonly tooMuch: null }
  | { readonly tree: null; readonly tooMuch: TooMuch };

const markdown = remark().use(remarkGfm).freeze();

/**
 * Reads a text as Markdown (CommonMark, tables, footnotes, task lists), unless that would take too long or would make far
 * more of it than was written. Whoever needs the tree of people's text gets it here.
 */
export function readMarkdown(text: string): ReadMarkdown {
  const long = tooMuchToRead(text);
  if (long !== null) return { tree: null, tooMuch: long };
  const tree = markdown.parse(text);
  const grown = mayGrow(text) ? tooMuchToShow(tree) : null;
  return grown === null ? { tree, tooMuch: null } : { tree: null, tooMuch: grown };
}

/**
 * Whether the text may become far more than was written, by a bound that is quickly worked out: as many references as there
 * are brackets, each to the whole text, or as many rows as lines, each as wide as the widest.
 */
export function mayGrow(text: string): boolean {
  const brackets = text.split('[').length - 1;
  const references = text.includes(']:') ? brackets * text.length : 0;
  let [lines, widest] = [0, 0];
  for (const line of text.split('\n')) {
    lines += 1;
    widest = Math.max(widest, line.split('|').length);
  }
  return references > markdownLimits.expansion || (widest > 1 && lines * widest > markdownLimits.cells);
}

/** What a tree would grow to: references carry their definition each, and short rows are filled up to the width of their table. */
function tooMuchToShow(tree: Root): TooMuch | null {
  const definitions = new Map<string, Definition>();
  visit(tree, 'definition', (definition) => {
    if (!definitions.has(definition.identifier)) definitions.set(definition.identifier, definition);
  });
  let [expansion, cells] = [0, 0];
  let tooMuch: TooMuch | null = null;
  visit(tree, (node) => {
    if (tooMuch !== null) return;
    const at = node.position?.start.offset ?? 0;
    if (node.type === 'linkReference') {
      const definition = definitions.get(node.identifier);
      expansion += (definition?.url.length ?? 0) + (definition?.title?.length ?? 0);
    }
    if (node.type === 'table') cells += node.children.length * (node.children[0]?.children.length ?? 0);
    if (expansion > markdownLimits.expansion) tooMuch = { of: 'expansion', found: expansion, at };
    if (cells > markdownLimits.cells) tooMuch = { of: 'cells', found: cells, at };
  });
  return tooMuch;
}
