import fc from 'fast-check';
import type { Nodes, Root } from 'mdast';
import { remark } from 'remark';
import remarkGfm from 'remark-gfm';
import { visit } from 'unist-util-visit';
import { describe, expect, it } from 'vitest';
import { inCode, inText } from '../../../scripts/terminal/markdown-text.ts';

// Read back by remark with its GFM extension, which this project did not write.

const hostile = [
  ...[
    '@octocat',
    '#12',
    'GH-1',
    'https://evil.example',
    'www.evil.example',
    'a@b.example',
    '<b>',
    '-->',
    '&lt;',
  ],
  ...[
    '[x](y)',
    '![x](y)',
    '[^1]',
    '`',
    '``',
    '|',
    '\\',
    '\\|',
    '**',
    '__',
    '~~',
    '$',
    '\n',
    '\n\n',
    '# ',
    '- ',
  ],
  ...['1. ', '> ', '    ', '---', '::error::', '##[error]', '\u202e', '\u001b[31m', 'plain', ' ', 'é'],
];
const written = fc.array(fc.constantFrom(...hostile), { maxLength: 12 }).map((parts) => parts.join(''));
const settings = { seed: 20_271, numRuns: 400 };

function kindsIn(markdown: string): Set<string> {
  const kinds = new Set<string>();
  visit(remark().use(remarkGfm).parse(markdown), (node: Nodes) => {
    kinds.add(node.type);
  });
  return kinds;
}

describe('what somebody wrote, as code', () => {
  it('is one span of code in one cell, whatever it is', () => {
    fc.assert(
      fc.property(written, (text) => {
        const tree: Root = remark()
          .use(remarkGfm)
          .parse(`| a | b |\n| --- | --- |\n| ${inCode(text)} | x |\n`);
        const [table, ...others] = tree.children;
        expect(others).toEqual([]);
        if (table?.type !== 'table') throw new Error('no table');
        const cells = table.children[1]?.children ?? [];
        expect(cells).toHaveLength(2);
        expect(cells[0]?.children.map(({ type }) => type)).toEqual(['inlineCode']);
      }),
      settings,
    );
  });

  it('stays as it was where nothing in it is a mark', () => {
    expect(inCode('Jacquard No. 4')).toBe('`Jacquard No. 4`');
  });

  it('is cut where it is very long', () => {
    expect(inCode('x'.repeat(5000))).toBe(`\`${'x'.repeat(160)}…\``);
  });
});

describe('a sentence that quotes what somebody wrote', () => {
  it('is text and nothing else, whatever it quotes', () => {
    fc.assert(
      fc.property(written, (text) => {
        const kinds = kindsIn(`- ${inText(text)}x\n`);
        expect([...kinds].sort()).toEqual(['list', 'listItem', 'paragraph', 'root', 'text']);
      }),
      settings,
    );
  });

  it('names nobody, and no issue', () => {
    fc.assert(
      fc.property(written, (text) => {
        visit(remark().use(remarkGfm).parse(inText(text)), 'text', ({ value }) => {
          expect(value).not.toMatch(/@\w|#\d/);
        });
      }),
      settings,
    );
  });
});
