import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { call } from './called.ts';
import { entryText, run, writeSmallClub } from './small-club.ts';

let folder = '';
const content = () => join(folder, 'club');
const mothFile = () => join(content(), 'entries/summer/moth/entry.md');
const check = (...args: string[]) => call('check', ['--content', content(), '--now', '2027-06-01', ...args]);

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'last-turn-check-'));
  await writeSmallClub(content());
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe('check on a clean folder', () => {
  it('says what it checked and ends with 0', async () => {
    const { code, out, error } = await check();
    expect({ code, out, error }).toEqual({ code: 0, out: 'Checked 2 entries, no errors.\n', error: '' });
  });
});

describe('check on a folder with a mistake', () => {
  beforeAll(() => writeFileSync(mothFile(), entryText('Moth', 'sal', '').replace('168 g', '168')));
  afterAll(() => writeFileSync(mothFile(), entryText('Moth', 'sal', '')));

  it('prints place, sentence and line for people, and ends with 1', async () => {
    const { code, out } = await check();
    expect(code).toBe(1);
    expect(out).toContain('entries/summer/moth/entry.md:6:19 error missing-unit');
    expect(out).toContain('  6 | mass: { airframe: 168 }\n    |                   ^^^\n');
    expect(out.trimEnd().split('\n').at(-1)).toBe('Checked 2 entries, 1 left out, 1 error.');
  });

  it('prints one annotation for each problem', async () => {
    const { code, out } = await check('--format', 'github');
    expect(code).toBe(1);
    expect(out).toMatch(
      /^::error file=[^\n]*club\/entries\/summer\/moth\/entry\.md,line=6,endLine=6,col=19,endColumn=22,title=missing-unit::/,
    );
  });

  it('prints summary and problems as JSON, and nothing else', async () => {
    const { code, out, error } = await check('--format', 'json');
    expect(code).toBe(1);
    expect(error).toBe('');
    const { summary, problems } = JSON.parse(out);
    expect(summary).toEqual({ entries: 2, published: 1, 'left-out': 1, errors: 1, warnings: 0 });
    expect(problems).toHaveLength(1);
    expect(Object.keys(problems[0]).sort()).toEqual([
      'accepted',
      'code',
      'column',
      'endColumn',
      'endLine',
      'file',
      'found',
      'line',
      'message',
      'related',
      'severity',
      'suggestion',
    ]);
  });

  it('reports only what was asked for', async () => {
    expect((await check(join(content(), 'entries/summer/lantern'))).out).toBe(
      'Checked 1 entry, no errors.\n',
    );
    expect((await check(mothFile())).code).toBe(1);
  });

  it('finds the content folder around a path', async () => {
    const { code, out } = await call('check', [mothFile(), '--now', '2027-06-01']);
    expect({ code, last: out.trimEnd().split('\n').at(-1) }).toEqual({
      code: 1,
      last: 'Checked 1 entry, 1 left out, 1 error.',
    });
  });
});

describe('a wrong use of check', () => {
  it.each([
    [
      ['--fromat', 'json'],
      '`check` has no option --fromat; it has --content, --format, --now, --help. Did you mean --format?',
    ],
    [['--format', 'xml'], 'The option --format takes text, github, json, but "xml" was given.'],
    [['--format'], 'The option --format needs a value after it.'],
    [['--help=yes'], 'The option --help takes no value, but "yes" was given.'],
    [['nowhere.md'], 'There is no file or folder nowhere.md.'],
    [[tmpdir()], `${tmpdir()} is not in the content folder`],
  ])('%j ends with 2 and a sentence', async (args, sentence) => {
    const { code, out, error } = await check(...args);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(error).toContain(sentence);
  });

  it('says where it looked for the content', async () => {
    const { code, error } = await call('check', ['--content', join(folder, 'none')]);
    expect(code).toBe(2);
    expect(error).toContain(`There is no content folder ${join(folder, 'none')}.`);
  });

  it('asks for --now where no commit says when', async () => {
    const { code, error } = await call('check', ['--content', content()]);
    expect(code).toBe(2);
    expect(error).toContain('Say it with --now');
  });
});

describe('--help', () => {
  // Each in a process of its own, as npm starts it; the other tests of a command may call it where they are.
  it.each([
    'awaiting',
    'build',
    'check',
    'close',
    'compare-rules',
    'dev',
    'figures',
    'format',
    'lint',
    'ruling',
    'speed',
    'test',
  ])('of %s ends with 0', async (name) => {
    const { code, out } = await run(name, ['--help']);
    expect(code).toBe(0);
    expect(out).toMatch(new RegExp(`^npm (run )?${name}`));
  });

  it('and an unknown option end every command', async () => {
    for (const name of ['build', 'dev', 'figures', 'format', 'lint', 'speed', 'test'])
      expect((await call(name, ['--nonsense'])).code, name).toBe(2);
  });
});

describe('figures', () => {
  it('prints every figure with its u and what it rests on', async () => {
    const { code, out } = await call('figures', [join(content(), 'entries/summer/lantern/entry.md')]);
    expect(code).toBe(0);
    expect(out).toMatch(/^Lantern \(summer\/lantern\), as first written\n/);
    // (168 g + 24.2 g) / (1.80 m × 0.150 m) = 192.2 g / 27.0 dm2 = 7.119 g/dm2, by hand.
    expect(out).toMatch(/Wing loading +7\.1\d+ ± 0\.\d+\sg\/dm² +measured/);
    expect(out).toMatch(/Tail volume +– +needs /);
  });

  it('gives them as JSON in SI', async () => {
    const { out } = await call('figures', [join(content(), 'entries/summer/lantern'), '--format', 'json']);
    const { figures, flights } = JSON.parse(out);
    // 1.80 m as written; the SI unit of length is the metre.
    expect(figures.span).toMatchObject({ value: 1.8, unit: 'm', basis: 'measured', assumptions: [] });
    expect(flights).toHaveLength(1);
  });

  it('refuses what is no entry', async () => {
    expect(await call('figures', [join(content(), 'site.md')])).toMatchObject({ code: 2 });
    expect(await call('figures', [])).toMatchObject({ code: 2 });
  });
});
