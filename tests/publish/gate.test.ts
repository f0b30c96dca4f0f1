import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Almanac } from '../../src/almanac/almanac.ts';
import { promisedPages } from '../../src/publish/addresses.ts';
import { type GateInput, gate } from '../../src/publish/gate.ts';
import { filesBelow } from '../../src/publish/site-folder.ts';
import { almanac, withText } from './sample-almanac.ts';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'last-turn-gate-'));
  const page = (text: string) => `<!doctype html><html><body><h1 id="top-of-page">${text}</h1></body></html>`;
  for (const { address } of promisedPages(almanac))
    write(address.endsWith('/') ? `${address.slice(1)}index.html` : address.slice(1), page('Long Haul'));
  write('data/long-haul.json', '{}');
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

function write(file: string, text: string): void {
  mkdirSync(dirname(join(folder, file)), { recursive: true });
  writeFileSync(join(folder, file), text);
}

async function faults(change: Partial<GateInput> = {}): Promise<string[]> {
  const found = await gate({
    folder,
    files: await filesBelow(folder),
    almanac,
    base: '/club/',
    previous: [],
    privatePaths: ['/home/maker/last-turn'],
    contentFiles: [],
    ...change,
  });
  return found.map(({ code, message }) => `${code}: ${message}`);
}

const entryPage = 'entries/long-haul/reedling/index.html';
const body = (html: string) => write(entryPage, `<html><body>${html}</body></html>`);

describe('the gate', () => {
  it('lets a whole site pass', async () => {
    body(
      '<a href="/club/">home</a> <a href="../../../left-out/?x=1">list</a> <a href="#here">x</a> <p id="here">41.7 s</p>' +
        '<a href="/club/left-out/#top-of-page">top</a> <a href="https://elsewhere.example/nothing/">out</a>' +
        '<a href="mailto:a@b.example">write</a> <!-- NaN --> <script>let a = undefined;</script>',
    );
    expect(await faults()).toEqual([]);
  });

  it('reads ids and fragments in any letters', async () => {
    body('<p id="flügel–1">x</p> <a href="#flügel–1">sound</a> <a href="#flügel–2">broken</a>');
    expect(await faults()).toEqual([
      'fragment-missing: The page /entries/long-haul/reedling/ links to #flügel–2, and nothing on it has that id.',
    ]);
  });

  it('misses the page of a published entry', async () => {
    rmSync(join(folder, entryPage));
    expect(await faults()).toEqual([
      'page-missing: The page /entries/long-haul/reedling/ was not built: the published entry long-haul/reedling.',
    ]);
  });

  it('misses the notice of an entry that was left out', async () => {
    const leftOut = [{ challenge: 'long-haul', entry: 'godwit' }];
    expect(await faults({ almanac: { ...almanac, leftOut } })).toEqual([
      'page-missing: The page /entries/long-haul/godwit/ was not built: ' +
        'the notice of the entry long-haul/godwit, which was left out.',
    ]);
  });

  it.each([
    ['<a href="/club/nowhere/">x</a>', '/club/nowhere/, where there is nothing'],
    ['<img src="gone.webp">', 'gone.webp, where there is nothing'],
    ['<img srcset="/club/a-1.webp 480w, /club/index.html 960w">', '/club/a-1.webp, where there is nothing'],
    ["<a href='/left-out/'>x</a>", "/left-out/, which is outside the site's base path /club/"],
    ['<a href="">x</a>', 'an empty address, which leads nowhere'],
  ])('follows the links of %s', async (html, words) => {
    body(html);
    expect(await faults()).toContain(`link-broken: The page /entries/long-haul/reedling/ links to ${words}.`);
  });

  it('looks for fragments, on the same page and on others', async () => {
    body('<a href="#nothing">x</a><a href="/club/left-out/#nobody">y</a>');
    expect(await faults()).toEqual([
      'fragment-missing: The page /entries/long-haul/reedling/ links to #nothing, and nothing on it has that id.',
      'fragment-missing: The page /entries/long-haul/reedling/ links to /left-out/#nobody, and nothing there has that id.',
    ]);
  });

  it.each(['NaN s', 'undefined', '[object Object]', '−Infinity', '[object Map]'])(
    'stops at "%s" in the text',
    async (text) => {
      body(`<td>${text}</td>`);
      const [fault] = await faults();
      expect(fault).toMatch(/^not-a-text: The page \/entries\/long-haul\/reedling\/ says "/);
    },
  );

  it('stops at one in a text that only a screen reader says', async () => {
    body('<svg aria-label="wing loading NaN"></svg>');
    expect(await faults()).toHaveLength(1);
  });

  it('finds a path of this machine in any text file', async () => {
    write('data/long-haul.json', '{"file":"/home/maker/last-turn/content/x.md"}');
    expect(await faults()).toEqual([
      'path-of-this-machine: The page /data/long-haul.json shows a path of this machine: /home/maker/last-turn.',
    ]);
    write('data/long-haul.json', '{"file":"https://host.example/home/maker/last-turn/"}');
    expect(await faults()).toEqual([]);
  });

  it('follows what style sheets ask for, from where they stand', async () => {
    write('assets/there.woff2', '');
    write(
      'assets/site.css',
      '@font-face{src:url(there.woff2)format("woff2"),url("data:font/woff2;base64,AA")}',
    );
    expect(await faults()).toEqual([]);
    write('assets/site.css', '@import "more.css";a{background:url( \'/club/p/gone.png\' )}');
    expect(await faults()).toEqual([
      'link-broken: The page /assets/site.css links to more.css, where there is nothing.',
      'link-broken: The page /assets/site.css links to /club/p/gone.png, where there is nothing.',
    ]);
  });

  it('keeps the addresses of the last build', async () => {
    expect(await faults({ previous: ['/', '/entries/long-haul/old-name/'] })).toEqual([
      'address-lost: The address /entries/long-haul/old-name/ was in the last build and leads nowhere now. ' +
        'Write its old name under `formerly` in the file that replaces it, or keep the file and write `withdrawn` in it.',
    ]);
  });

  it('counts every file of the content', async () => {
    const files = [
      { file: 'site.md', fate: 'published' as const, why: null },
      { file: 'ghost.md', fate: 'ignored' as const, why: 'a rule' },
      { file: 'drafts/', fate: 'ignored' as const, why: 'a rule' },
    ];
    const accounted: Almanac = { ...almanac, files };
    expect(
      await faults({ almanac: accounted, contentFiles: ['drafts/x.md', 'site.md', 'stray.txt'] }),
    ).toEqual([
      'file-unaccounted: The file stray.txt is neither published nor left out nor ignored.',
      'file-unaccounted: The file ghost.md is accounted for but is not in the content folder.',
    ]);
  });
});

describe("a builder's own words", () => {
  it('may be those the gate looks for', async () => {
    const text = 'The turn was undefined, and NaN is the name of my cat.';
    body(`<p>The turn was <em>undefined</em>, and NaN is the name of my cat.</p>`);
    expect(await faults({ almanac: withText(text, `<p>${text}</p>`) })).toEqual([]);
  });

  it('do not hide what the generator got wrong', async () => {
    const text = 'The turn was undefined in the end.';
    body('<p>The turn was undefined in the end.</p><td>wing loading undefined N/m²</td>');
    expect(await faults({ almanac: withText(text, '') })).toEqual([
      'not-a-text: The page /entries/long-haul/reedling/ says "undefined" where a value belongs: "wing loading undefined N/m²".',
    ]);
  });

  it('may hold a dead link, which costs nobody else the site', async () => {
    const html = '<p><a href="gone/?a=1&amp;b=2">x</a></p>';
    body(html);
    expect(await faults({ almanac: withText('[x](gone/?a=1&b=2)', html) })).toEqual([]);
  });

  it('may look like markup without being taken for it', async () => {
    body(
      '<p>I wrote href="/club/nowhere/" and href="/club/left-out/#nobody" and href="#none" here.</p>' +
        '<p title="a > b">fine</p>',
    );
    expect(await faults()).toEqual([]);
  });
});
