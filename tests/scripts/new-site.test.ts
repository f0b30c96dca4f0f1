import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readAlmanac } from '../../src/almanac/read-almanac.ts';
import { serveFolder } from '../browser/serve-folder.ts';
import { run } from './small-club.ts';

const folder = mkdtempSync(join(tmpdir(), 'last-turn-new-'));
const club = join(folder, 'hollow-ridge');
const now = '2026-11-25';
const said = [
  ...['--title', 'Hollow Ridge: Duration'],
  ...['--club', 'Hollow Ridge Aeromodellers'],
  ...['--address', 'https://hollow-ridge.example/air/duration/'],
  ...['--repository', 'https://github.com/hollow-ridge/duration'],
  ...['--send-to', 'entries@hollow-ridge.example'],
  ...['--licence', 'CC BY 4.0'],
  ...['--generator', 'https://code.example/tools/last-turn.git'],
];
const make = (name: string, ...args: readonly string[]) =>
  run('new', ['site', join(folder, name), '--now', now, ...args]);
const read = (...path: readonly string[]) => readFileSync(join(folder, ...path), 'utf8');

afterAll(() => rmSync(folder, { recursive: true, force: true }));

// One story, told in order: a club begins, looks at its site, and gets its first aircraft.
describe('a new club', () => {
  const site = join(folder, 'served');
  const build = (moment: string) =>
    run('build', ['--content', join(club, 'content'), '--out', site, '--now', moment, '--strict']);

  it('gets its folder, and is told what comes next', async () => {
    const { code, out, error } = await make('hollow-ridge', ...said);
    expect(error).toBe('');
    expect(code).toBe(0);
    expect(out).toBe(
      `Written to ${club}.\n` +
        'The challenge hollow-ridge-duration-2027 opens on 2027-04-01 and closes on 2027-09-30.\n' +
        'Next: read README.md there; `git init --initial-branch main`, add everything, commit, and follow PUBLISHING.md.\n',
    );
    expect(readdirSync(join(club, 'content'), { recursive: true }).sort()).toEqual([
      'challenges',
      'challenges/hollow-ridge-duration-2027.md',
      'pages',
      'pages/field-safety.md',
      'pages/glossary.md',
      'pages/handbook.md',
      'pages/how-to-measure.md',
      'pages/privacy.md',
      'site.md',
    ]);
  });

  it('is checked with no problem at all, and its challenge is announced', async () => {
    const almanac = await readAlmanac({ content: join(club, 'content'), now: `${now}T00:00:00Z` });
    expect(almanac.problems).toEqual([]);
    expect(almanac.challenges.map(({ state }) => state)).toEqual(['announced']);
    expect(almanac.site).toMatchObject({
      title: 'Hollow Ridge: Duration',
      club: 'Hollow Ridge Aeromodellers',
      sendTo: 'entries@hollow-ridge.example',
      licence: 'CC BY 4.0',
      repository: { kind: 'github', url: 'https://github.com/hollow-ridge/duration', branch: 'main' },
    });
  });

  it('has a site that any host serves below its path', async () => {
    const { code, error } = await build(now);
    expect(error).toBe('');
    expect(code).toBe(0);
    const host = await serveFolder(site, '/air/duration/');
    try {
      for (const page of ['', 'how-to-measure/', 'field-safety/', 'glossary/', 'privacy/', 'handbook/']) {
        const answer = await fetch(host.address + page);
        expect(answer.status, page).toBe(200);
        expect(await answer.text()).not.toMatch(/Tallowick|Slow Thread|\{\{|example\.org/);
      }
      const front = await (await fetch(host.address)).text();
      expect(front).toContain('opens on 1 April 2027');
      const links = [...front.matchAll(/href="(\/[^"]*)"/g)].map(([, path]) => path ?? '');
      expect(links.length).toBeGreaterThan(10);
      for (const path of links) expect((await fetch(new URL(path, host.address))).status, path).toBe(200);
    } finally {
      await host.close();
    }
  });

  it('takes the aircraft that its CONTRIBUTING.md shows, and builds again over the site that is there', async () => {
    const [, example = ''] = /```markdown\n([\s\S]*?) *```/.exec(read('hollow-ridge/CONTRIBUTING.md')) ?? [];
    const entry = join(club, 'content/entries/hollow-ridge-duration-2027/lantern');
    mkdirSync(entry, { recursive: true });
    writeFileSync(join(entry, 'entry.md'), example.replace(/^ {3}/gm, ''));
    const inSeason = '2027-04-02';
    const almanac = await readAlmanac({ content: join(club, 'content'), now: `${inSeason}T00:00:00Z` });
    expect(almanac.problems).toEqual([]);
    const { code, out } = await build(inSeason);
    expect(code).toBe(0);
    expect(out).toMatch(/^Built 1 entry of 1 challenge, /);
    expect(existsSync(join(site, 'entries/hollow-ridge-duration-2027/lantern/index.html'))).toBe(true);
  });

  it('is never written over', async () => {
    const before = read('hollow-ridge/README.md');
    const { code, error } = await make('hollow-ridge', '--title', 'Another');
    expect(code).toBe(2);
    expect(error).toBe(
      `${club} has something in it already, and nothing is written over. Choose a new folder.\n` +
        '`npm run new -- site --help` says what it takes.\n',
    );
    expect(read('hollow-ridge/README.md')).toBe(before);
  });
});

describe('a club of which little is known', () => {
  let out = '';
  beforeAll(async () => {
    mkdirSync(join(folder, 'moss & fen'));
    ({ out } = await make('moss & fen'));
  });

  it('is called after its folder, which may be there already if it is empty', () => {
    expect(read('moss & fen/content/site.md')).toContain('title: Moss Fen\n');
    expect(read('moss & fen/README.md')).toMatch(/^# Moss Fen\n/);
  });

  it('is told what nobody has said yet, and where to write it', () => {
    expect(out).toContain('  where the site is published: `address` in content/site.md\n');
    expect(out).toContain('  how the organisers are reached: content/pages/privacy.md\n');
    expect(read('moss & fen/content/site.md')).toContain('\n# address: https://');
  });

  it('is checked with no problem but that its address is to be said', async () => {
    const almanac = await readAlmanac({
      content: join(folder, 'moss & fen/content'),
      now: `${now}T00:00:00Z`,
    });
    expect(almanac.problems.map(({ code }) => code)).toEqual(['no-address']);
  });
});

describe('new site', () => {
  it.each([
    ['gitlab', 'https://gitlab.com/hollow-ridge/duration', ['.gitlab-ci.yml', '.gitlab']],
    ['forgejo', 'https://git.hollow-ridge.example/air/duration', ['.forgejo']],
  ])('writes what a repository on %s needs, and nothing of another forge', async (kind, repository, own) => {
    const { code } = await make(kind, ...said, '--repository', repository, '--kind', kind);
    expect(code).toBe(0);
    const hidden = readdirSync(join(folder, kind)).filter((name) => name.startsWith('.'));
    expect(hidden.sort()).toEqual(['.gitignore', ...own].sort());
    const almanac = await readAlmanac({ content: join(folder, kind, 'content'), now: `${now}T00:00:00Z` });
    expect(almanac.problems).toEqual([]);
    expect(almanac.site.repository).toEqual({ kind, url: repository, branch: 'main' });
  });

  it('writes nothing but a list on a dry run', async () => {
    const { code, out } = await make('dry', '--dry-run', ...said);
    expect(code).toBe(0);
    expect(out).toContain('\ncontent/site.md\n');
    expect(existsSync(join(folder, 'dry'))).toBe(false);
  });

  it('takes texts that YAML and Markdown would read otherwise as they are', async () => {
    await make('odd', ...said, '--title', '# 1: "Thread" & [twist]', '--challenge', 'thread');
    const almanac = await readAlmanac({ content: join(folder, 'odd/content'), now: `${now}T00:00:00Z` });
    expect(almanac.problems).toEqual([]);
    expect(almanac.site.title).toBe('# 1: "Thread" & [twist]');
    expect(almanac.challenges[0]?.challenge.title).toBe('# 1: "Thread" & [twist] 2027');
    expect(read('odd/README.md')).toMatch(/^# \\# 1: "Thread" \\& \\\[twist\\\]\n/);
  });

  it('proposes the address at which a repository on github.com is published', async () => {
    await make('proposed', '--repository', 'git@github.com:Hollow-Ridge/duration.git');
    expect(read('proposed/content/site.md')).toContain('address: https://hollow-ridge.github.io/duration/\n');
    expect(read('proposed/content/site.md')).toContain('url: https://github.com/Hollow-Ridge/duration,');
  });

  it.each([
    ['an address that is none', ['--address', 'hollow-ridge'], /"hollow-ridge"/],
    ['a mail address that is none', ['--send-to', 'entries'], /"entries"/],
    [
      'a repository that is none',
      ['--repository', 'duration'],
      /The option --repository takes the web address/,
    ],
    [
      'a host that could be anything',
      ['--repository', 'https://forge.example/a/b'],
      /Say it with --kind: github, gitlab, forgejo\./,
    ],
    ['another kind', ['--kind', 'pigeon'], /takes github, gitlab, forgejo, but "pigeon" was given/],
    [
      'a generator that no shell should see',
      ['--generator', 'https://code.example/$(id)'],
      /The option --generator takes/,
    ],
    ['a day that is none', ['--opens', '2027-02-30'], /--opens: "2027-02-30" is not a day of the calendar/],
    [
      'an end before the beginning',
      ['--opens', '2027-06-01', '--closes', '2027-05-01'],
      /would close on 2027-05-01, before it opens/,
    ],
    ['a name the site needs', ['--challenge', 'data'], /is one the site itself needs/],
  ])('refuses %s in a sentence and writes nothing', async (_, args, sentence) => {
    const { code, error } = await make('refused', ...args);
    expect(code).toBe(2);
    expect(error).toMatch(sentence);
    expect(existsSync(join(folder, 'refused'))).toBe(false);
  });

  it('refuses a place inside the generator', async () => {
    const inside = resolve(import.meta.dirname, '../../our-club');
    const { code, error } = await run('new', ['site', inside]);
    expect(code).toBe(2);
    expect(error).toContain("lies inside the generator's own folder");
    expect(existsSync(inside)).toBe(false);
  });

  it('refuses a file in the place of a folder', async () => {
    writeFileSync(join(folder, 'file'), '');
    const { code, error } = await make('file');
    expect(code).toBe(2);
    expect(error).toContain('cannot be used as a folder (ENOTDIR)');
  });
});
