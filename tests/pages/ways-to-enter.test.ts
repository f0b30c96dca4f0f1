import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readAlmanac } from '../../src/almanac/read-almanac.ts';
import { entryFile, inFolder } from '../entries/content-folder.ts';
import { type BuiltPages, base, buildPages } from './build-site.ts';

// A folder written here; who may enter when, and whose file is given out, is the project's own decision.

const challenge = (opens: string, closes: string) =>
  `---\ntitle: Haul\nopens: ${opens}\ncloses: ${closes}\n---\n`;

/** Letters, line ends and a byte order mark that no writer of files would choose by itself. */
const odd = `\uFEFF${entryFile('Plover & Söhne', '#  measured twice', 'entered:   2027-04-01')}`.replaceAll(
  '\n',
  '\r\n',
);

const secret = (more: string) => entryFile('Wren').replace('builder: amarsh', `builder: ${more}`);

const files = {
  'site.md': '---\nformat: 1\ntitle: Haul\nsend-to: entries@haul.example\n---\n',
  'challenges/open.md': challenge('2027-03-01', '2027-10-31'),
  'challenges/announced.md': challenge('2027-08-01', '2027-10-31'),
  'challenges/closed.md': challenge('2027-01-01', '2027-02-28'),
  'builders/otter.md': '---\njunior: true\n---\n',
  'entries/open/plover/entry.md': odd,
  'entries/closed/plover/entry.md': entryFile('Plover'),
  'entries/open/gone/entry.md': entryFile('Gone', 'withdrawn: { date: 2027-04-02, reason: sold }'),
  'entries/open/wren/entry.md': secret('{ handle: fox, name: Secret Name, junior: true }'),
  'entries/open/wren-two/entry.md': secret('[amarsh, { handle: fox, name: Secret Name, junior: true }]'),
  'entries/open/wren-three/entry.md': secret('{ handle: otter, name: Secret Name }'),
};

let site: BuiltPages;

beforeAll(async () => {
  const almanac = await inFolder(files, (content) => readAlmanac({ content, now: '2027-07-01T00:00:00Z' }));
  site = await buildPages(almanac);
});

afterAll(() => site.remove());

const change = (entry: string) => `href="${base}enter/?entry=${entry}"`;

describe('an aircraft that can be added to', () => {
  it('leads to the form with its file, and gives the file itself', async () => {
    const page = await site.page('entries/open/plover/');
    expect(page).toContain(change('open/plover'));
    expect(page).toContain(`href="${base}assets/entries/open/plover.md" download="entry.md"`);
  });

  it('gives its file byte for byte', async () => {
    const bytes = await readFile(join(site.folder, 'assets/entries/open/plover.md'));
    expect(bytes.equals(Buffer.from(odd))).toBe(true);
  });

  it('can be added to while the result of a closed challenge is not final', async () => {
    expect(await site.page('entries/closed/plover/')).toContain(change('closed/plover'));
  });
});

describe('an aircraft whose file is kept back', () => {
  it.for(['gone', 'wren', 'wren-two', 'wren-three'])('says nothing of it: %s', async (entry) => {
    const page = await site.page(`entries/open/${entry}/`);
    expect(page).not.toContain('enter/?entry=');
    expect(page).not.toContain('assets/entries/');
  });

  it('has it nowhere in the site', async () => {
    const given = await readdir(join(site.folder, 'assets/entries'), { recursive: true });
    expect(given.filter((file) => file.endsWith('.md')).sort()).toEqual([
      'closed/plover.md',
      'open/plover.md',
    ]);
  });

  it('has the name of a junior in no file of the site', async () => {
    const all = await readdir(site.folder, { recursive: true, withFileTypes: true });
    const texts = all.filter((one) => one.isFile()).map((one) => join(one.parentPath, one.name));
    expect(texts.length).toBeGreaterThan(20);
    for (const file of texts) expect((await readFile(file)).includes('Secret Name'), file).toBe(false);
  });
});

describe('the way to the form', () => {
  it.for(['open', 'announced'])('stands on board and rules of a challenge that is %s', async (id) => {
    for (const path of [`challenges/${id}/`, `challenges/${id}/rules/`])
      expect(await site.page(path)).toContain(
        `<a href="${base}enter/?challenge=${id}">Enter an aircraft</a>`,
      );
  });

  it('stands on neither of a closed one', async () => {
    for (const path of ['challenges/closed/', 'challenges/closed/rules/'])
      expect(await site.page(path)).not.toContain('?challenge=');
  });

  it('is what the foot of every page leads to, not a bare mail', async () => {
    const page = await site.page('figures/');
    const foot = page.slice(page.indexOf('<footer'));
    expect(foot).toMatch(new RegExp(`<a href="${base}enter/">\\s*Enter an aircraft\\s*</a>`));
    expect(foot).not.toContain('mailto:');
  });

  it('says without scripts where the file of an aircraft is to be had', async () => {
    expect(await site.page('enter/')).toMatch(/class="without-scripts">[^<]*take its file from its page/);
  });
});
