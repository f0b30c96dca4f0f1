import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Element } from 'hast';
import rehypeParse from 'rehype-parse';
import { unified } from 'unified';
import { visit } from 'unist-util-visit';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { entryText, run, writeSmallClub } from '../scripts/small-club.ts';

// A club with one builder who means harm, in every field that takes a text and in the text below, checked and built by the
// commands themselves.

const evil = `</title></script><script src=https://x.example/a.js></script>"><img src=x onerror=alert(1)>&lt;b&gt;`;
const prose = `# Ruling by the organiser

<h1 id="content">All flights accepted</h1>

[${evil.replaceAll('[', '')}](javascript:alert(1)) ![pixel](https://x.example/pixel.png) <https://x.example/>

[win]: //x.example/a "t"

[win] [file](file:///etc/passwd) **NaN undefined [object Object]** ::error::x ##[error]x ${'w'.repeat(3000)}

| a | ${'long '.repeat(50)} |
|---|---|
| ${'x'.repeat(500)} | b |

Note.[^content]

[^content]: Foot.
`;

let folder = '';
const content = () => join(folder, 'club');
const site = () => join(folder, 'site');
const args = () => ['--content', content(), '--now', '2027-06-01'];
const page = (path: string) => readFileSync(join(site(), path, 'index.html'), 'utf8');

function elementsOf(html: string): Element[] {
  const found: Element[] = [];
  visit(unified().use(rehypeParse).parse(html), 'element', (element) => {
    found.push(element);
  });
  return found;
}

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'hostile-club-'));
  await writeSmallClub(content());
  const text = JSON.stringify(evil);
  const entry = entryText(
    text,
    `{ handle: mal, name: ${text}, club: ${text} }`,
    `\nphotos: [{ file: bench.png, alt: ${text} }]`,
  );
  const flights = `  - { number: 1, date: 2027-05-22, time: 48.3 s, turns: 400, note: ${text}, changed: ${text}, damage: ${text} }`;
  mkdirSync(join(content(), 'entries/summer/mal'));
  writeFileSync(
    join(content(), 'entries/summer/mal/entry.md'),
    entry.replace(/ {2}- \{ number: 1.*/, flights).replace(/\n---\n[\s\S]*$/, `\n---\n${prose}`),
  );
  writeFileSync(
    join(content(), 'entries/summer/mal/bench.png'),
    readFileSync(join(content(), 'entries/summer/lantern/bench.png')),
  );
  mkdirSync(join(content(), 'entries/summer/::error::x ##[error]y'));
  writeFileSync(join(content(), 'entries/summer/::error::x ##[error]y/entry.md'), 'x');
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe('a club with a builder who means harm', () => {
  it('is checked and built, with no line or mark that a build server or terminal would obey', async () => {
    const built = await run('build', [...args(), '--out', site()]);
    expect(built.code).toBe(0);
    const checked = await run('check', args());
    const awaiting = await run('awaiting', args());
    const figures = await run('figures', [
      join(content(), 'entries/summer/mal/entry.md'),
      '--now',
      '2027-06-01',
    ]);
    for (const { out, error } of [built, checked, awaiting, figures]) {
      expect(out + error).not.toMatch(/^\s*::/m);
      expect(out + error).not.toContain('##[');
      expect(out + error).not.toContain('\u001b');
    }
  });

  it('has pages with nothing of theirs active, and their words in their own place', () => {
    for (const path of [
      '',
      'entries/summer/mal',
      'entries/summer/moth',
      'builders/mal',
      'challenges/summer',
    ]) {
      const elements = elementsOf(page(path));
      const named = (name: string) => elements.filter(({ tagName }) => tagName === name);
      expect([path, named('h1').length]).toEqual([path, 1]);
      for (const { tagName, properties } of elements) {
        expect(Object.keys(properties).filter((name) => /^on/i.test(name))).toEqual([]);
        for (const address of [
          properties.src,
          properties.srcSet,
          tagName === 'link' ? properties.href : null,
        ])
          expect(String(address ?? '')).not.toContain('x.example');
        expect(String(properties.href ?? '')).not.toMatch(/^(?:javascript|data|vbscript|file):|^\/\//i);
        if (String(properties.href ?? '').includes('x.example'))
          expect(properties.rel).toEqual(['nofollow', 'ugc', 'noopener']);
      }
      const ids = elements.flatMap(({ properties }) =>
        properties.id === undefined ? [] : [String(properties.id)],
      );
      expect(ids.filter((id, index) => ids.indexOf(id) !== index)).toEqual([]);
    }
    const html = page('entries/summer/mal');
    const [, after = ''] = html.split('id="builder-text"');
    const [section = ''] = after.split('</section>');
    expect(section).toContain('<h3>Ruling by the organiser</h3>');
    expect(html.replace(section, '')).not.toContain('Ruling by the organiser');
  });

  it('has data files that other programs can read, and no cell that a spreadsheet would reckon', () => {
    const data = join(site(), 'data');
    for (const file of readdirSync(data)) {
      const text = readFileSync(join(data, file), 'utf8');
      if (file.endsWith('.json')) expect(() => JSON.parse(text)).not.toThrow();
      else expect(text).not.toMatch(/(?:^|,)"?[=+@-]/m);
    }
    const feed = readFileSync(join(site(), 'feed.xml'), 'utf8');
    expect(feed).not.toContain('<script');
    expect(feed).not.toContain('<img');
  });
});
