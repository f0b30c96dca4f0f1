import * as fc from 'fast-check';
import type { Element } from 'hast';
import rehypeParse from 'rehype-parse';
import { unified } from 'unified';
import { visit } from 'unist-util-visit';
import { describe, expect, it } from 'vitest';
import { createMarkdown, renderMarkdown } from '../../src/entries/markdown.ts';

/** Every element a browser's parser (the HTML standard's algorithm, rehype-parse) makes of the rendered text. */
function elementsOf(markdown: string): Element[] {
  const found: Element[] = [];
  visit(
    unified().use(rehypeParse, { fragment: true }).parse(renderMarkdown(markdown)),
    'element',
    (element) => {
      found.push(element);
    },
  );
  return found;
}

const harmless = new Set(
  'a blockquote br code del em h1 h2 h3 h4 h5 h6 hr input li ol p pre section strong sup table tbody td th thead tr ul'.split(
    ' ',
  ),
);

function expectSafe(markdown: string): void {
  for (const { tagName, properties } of elementsOf(markdown)) {
    expect(harmless.has(tagName), `<${tagName}> from ${JSON.stringify(markdown)}`).toBe(true);
    for (const name of Object.keys(properties))
      expect(name).not.toMatch(/^on|^style$|^srcset$|^formaction$/i);
    const base = 'https://site.example/base/';
    if (typeof properties.href === 'string' && URL.canParse(properties.href, base))
      expect(['https:', 'http:', 'mailto:']).toContain(new URL(properties.href, base).protocol);
    expect(properties.src).toBeUndefined();
  }
}

describe('what people write', () => {
  it('becomes what CommonMark 0.31.2 says (examples 62, 350 and 482), headings one lower', () => {
    expect(renderMarkdown('# foo')).toBe('<h2>foo</h2>');
    expect(renderMarkdown('*foo bar*')).toBe('<p><em>foo bar</em></p>');
    expect(renderMarkdown('[link](/uri "title")')).toBe('<p><a href="/uri" title="title">link</a></p>');
  });

  it('may have tables (GFM 0.29, example 198), strikes and task lists', () => {
    expect(renderMarkdown('| foo | bar |\n| --- | --- |\n| baz | bim |').replaceAll('\n', '')).toBe(
      '<table><thead><tr><th>foo</th><th>bar</th></tr></thead><tbody><tr><td>baz</td><td>bim</td></tr></tbody></table>',
    );
    expect(renderMarkdown('~~Hi~~')).toBe('<p><del>Hi</del></p>');
    expect(renderMarkdown('- [x] done')).toContain('<input type="checkbox" checked disabled>');
  });

  it('keeps footnotes and their way back together', () => {
    const elements = elementsOf('Flew.[^1]\n\n[^1]: Twice.');
    const ids = elements.map(({ properties }) => properties.id).filter((id) => id !== undefined);
    const links = elements.map(({ properties }) => properties.href).filter((href) => href !== undefined);
    expect(links).toHaveLength(2);
    for (const link of links) expect(ids).toContain(String(link).slice(1));
    expect(new Set(ids).size).toBe(ids.length);
  });

  it('begins right below the title of the page and leaves no level out, however its writer began', () => {
    expect(renderMarkdown('## a\n\n#### b\n\n## c')).toBe('<h2>a</h2>\n<h3>b</h3>\n<h2>c</h2>');
  });

  it('shifts headings as far as asked, never beyond six', () => {
    expect(createMarkdown({ headingShift: 2 })('# a')).toBe('<h3>a</h3>');
    expect(renderMarkdown('# a', { headingShift: 0 })).toBe('<h1>a</h1>');
    const all = renderMarkdown('# a\n\n## b\n\n### c\n\n#### d\n\n##### e\n\n###### f');
    expect(all.match(/<h\d>/g)).toEqual(['<h2>', '<h3>', '<h4>', '<h5>', '<h6>', '<h6>']);
  });

  it('marks links that lead away, and only those', () => {
    expect(renderMarkdown('[a](https://a.example)')).toBe(
      '<p><a href="https://a.example" rel="nofollow ugc noopener">a</a></p>',
    );
    expect(renderMarkdown('[a](../b/)')).toBe('<p><a href="../b/">a</a></p>');
  });

  it('keeps the footnotes of two texts on one page apart', () => {
    const markdown = createMarkdown();
    const [first, second] = [
      markdown('A.[^1]\n\n[^1]: Once.', 'a-'),
      markdown('B.[^1]\n\n[^1]: Twice.', 'b-'),
    ];
    expect(renderMarkdown('A.[^1]\n\n[^1]: Once.', { idPrefix: 'a-' })).toBe(first);
    const page: Element[] = [];
    visit(
      unified()
        .use(rehypeParse, { fragment: true })
        .parse(first + second),
      'element',
      (element) => {
        page.push(element);
      },
    );
    const ids = page.map(({ properties }) => properties.id).filter((id) => id !== undefined);
    // A reference, a note and a heading each.
    expect(ids).toHaveLength(6);
    expect(new Set(ids).size).toBe(6);
    for (const { properties } of page) {
      if (typeof properties.href === 'string') expect(ids).toContain(properties.href.slice(1));
      for (const id of [properties.ariaDescribedBy ?? []].flat()) expect(ids).toContain(id);
    }
  });

  it('shows the words of a picture in its place', () => {
    expect(renderMarkdown('See ![the *tip*](wing.jpg "title") here.')).toBe('<p>See the tip here.</p>');
    expect(renderMarkdown('[![wing][w]](https://a.example)\n\n[w]: wing.jpg')).toMatch(
      /^<p><a [^>]*>wing<\/a><\/p>$/,
    );
    expect(renderMarkdown('`![a](b.jpg)`')).toBe('<p><code>![a](b.jpg)</code></p>');
    for (const address of [
      'https://x.example/a.png',
      '//x.example/a.png',
      'data:image/png;base64,AA',
      'a.jpg',
    ])
      expect(elementsOf(`![a](<${address}>)`).map(({ tagName }) => tagName)).toEqual(['p']);
  });

  it('is nothing where nothing is written', () => {
    expect(renderMarkdown(' \n\n')).toBe('');
  });
});

describe('hostile text', () => {
  const attacks = [
    '<script>alert(1)</script>',
    'a <img src=x onerror=alert(1)> b',
    '<svg/onload=alert(1)>',
    '<iframe src="https://x.example"></iframe>',
    '<style>*{display:none}</style>',
    '<a href="javascript:alert(1)">x</a>',
    '[x](javascript:alert(1))',
    '[x](JaVaScRiPt:alert(1))',
    '[x](java\tscript:alert(1))',
    '[x](&#106;avascript:alert(1))',
    '[x](&#x6A;avascript&colon;alert(1))',
    '[x](data:text/html;base64,PHNjcmlwdD4=)',
    '[x](vbscript:msgbox)',
    '[x]: javascript:alert(1)\n\n[x]',
    '<javascript:alert(1)>',
    '![x](javascript:alert(1))',
    '![x](x"onerror="alert(1))',
    '[x](https://a.example "\\" onmouseover=alert(1)")',
    '`</code><script>alert(1)</script>`',
    '```"><script>\nalert(1)\n```',
    '[^"><script>alert(1)</script>]\n\n[^"><script>alert(1)</script>]: x',
    '<!-- --><script>alert(1)</script>',
    '<form action="https://x.example"><input name=a>',
    '<base href="https://x.example/">',
    '<meta http-equiv=refresh content="0;url=https://x.example">',
  ];

  it.each(attacks)('is harmless: %j', (attack) => {
    expectSafe(attack);
    expect(renderMarkdown(attack)).not.toMatch(/<(script|iframe|style|svg|form|base|meta)\b/i);
  });

  it('comes back as it was written where it is nested too deeply to be read', () => {
    const text = `${'>'.repeat(20_000)} <b>&amp;</b>`;
    expect(renderMarkdown(text)).toBe(`<pre>${'>'.repeat(20_000)} &lt;b>&amp;amp;&lt;/b></pre>`);
  });

  it('is harmless in any mixture', () => {
    const piece = fc.oneof(
      fc.constantFrom(
        ...attacks,
        '\n',
        '\n\n',
        '[',
        '](',
        ')',
        '"',
        '<',
        '>',
        '&lt;',
        '|',
        '`',
        '*',
        '![',
        '[^1]',
      ),
      fc.string({ maxLength: 5 }),
    );
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 12 }), (pieces) => expectSafe(pieces.join(''))),
      { seed: 8, numRuns: 300 },
    );
  });
});
