import { spawnSync } from 'node:child_process';
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
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { filesBelow } from '../../src/publish/site-folder.ts';
import { entryText, run, writeSmallClub } from './small-club.ts';

let folder = '';
const content = () => join(folder, 'club');
const out = () => join(folder, 'dist');
const moth = () => join(content(), 'entries/summer/moth/entry.md');
const build = (to: string, args: readonly string[] = [], environment: Record<string, string> = {}) =>
  run('build', ['--content', content(), '--out', to, '--now', '2027-06-01', ...args], environment);

async function bytesOf(site: string): Promise<Map<string, string>> {
  const files = await filesBelow(site);
  return new Map(files.map((file) => [file, readFileSync(join(site, file), 'latin1')]));
}

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'last-turn-build-'));
  await writeSmallClub(content());
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

// One story, told in order: each test begins with the site the one before left.
describe('a build', () => {
  it('writes pages, data, photos and the list of addresses under the base path', async () => {
    const { code, out: printed, error } = await build(out());
    expect(error).toBe('');
    expect(code).toBe(0);
    expect(printed).toMatch(/^Built 2 entries of 1 challenge, \d+ addresses, in /);
    const files = await filesBelow(out());
    for (const file of [
      'index.html',
      '404.html',
      'entries/summer/lantern/index.html',
      'data/summer.json',
      '.nojekyll',
    ])
      expect(files).toContain(file);
    expect(
      files.filter((file) => /^photos\/[0-9a-f]{16}-\d+\.(?:webp|jpg)$/.test(file)).length,
    ).toBeGreaterThan(1);
    expect(readFileSync(join(out(), 'index.html'), 'utf8')).toContain('href="/air/');
    const { addresses } = JSON.parse(readFileSync(join(out(), 'addresses.json'), 'utf8'));
    expect(addresses).toContain('/entries/summer/moth/');
    expect(readdirSync(folder).sort()).toEqual(['club', 'dist']);
  });

  it('gives the same bytes in any time zone, language and folder', async () => {
    const other = join(folder, 'elsewhere');
    const { code } = await build(other, [], {
      TZ: 'Pacific/Kiritimati',
      LANG: 'ar_EG.UTF-8',
      LC_ALL: 'ar_EG.UTF-8',
      BASE_URL: '/of-some-shell/',
    });
    expect(code).toBe(0);
    expect(await bytesOf(other)).toEqual(await bytesOf(out()));
  });

  it('takes another address for one build', async () => {
    const other = join(folder, 'elsewhere');
    expect((await build(other, ['--site', 'https://other.example/'])).code).toBe(0);
    expect(readFileSync(join(other, 'index.html'), 'utf8')).not.toContain('"/air/');
  });

  it('leaves a bad entry out, with a notice at its address and at its builder’s, and says so last', async () => {
    writeFileSync(moth(), entryText('Moth', 'sal', '').replace('168 g', '168'));
    const { code, out: printed, error } = await build(out());
    expect(error).toContain('missing-unit');
    expect(code).toBe(0);
    expect(printed.trimEnd().split('\n').at(-1)).toBe('left out: 1 entry: summer/moth');
    const { addresses } = JSON.parse(readFileSync(join(out(), 'addresses.json'), 'utf8'));
    expect(addresses).toContain('/entries/summer/moth/');
    expect(addresses).toContain('/builders/sal/');
    expect(readFileSync(join(out(), 'entries/summer/moth/index.html'), 'utf8')).not.toContain('168');
  });

  it('stops for any error where it is strict, and leaves the last site as it was', async () => {
    const before = await bytesOf(out());
    const { code, error } = await build(out(), ['--strict']);
    expect(code).toBe(1);
    expect(error).toContain('Not built: 1 error, and --strict allows none.');
    expect(await bytesOf(out())).toEqual(before);
  });

  it('stops where site.md cannot be read: nobody would know where the site belongs', async () => {
    const before = await bytesOf(out());
    const site = join(content(), 'site.md');
    const written = readFileSync(site, 'utf8');
    writeFileSync(site, written.replace('title:', 'titel:'));
    const { code, error } = await build(out());
    writeFileSync(site, written);
    expect(code).toBe(1);
    expect(error).toContain(
      'Not built: site.md cannot be read, and without it nobody knows the address of the site.',
    );
    expect(await bytesOf(out())).toEqual(before);
  });

  it('stops where the only challenge cannot be read, also where nothing was published before', async () => {
    const file = join(content(), 'challenges/summer.md');
    const written = readFileSync(file, 'utf8');
    writeFileSync(file, written.replace('opens:', 'opns:'));
    const first = join(folder, 'first');
    const { code, error } = await build(first);
    writeFileSync(file, written);
    expect(code).toBe(1);
    expect(error).toMatch(/^Not built: .*challenges\/summer\.md/m);
    expect(existsSync(first)).toBe(false);
  });

  it('is not taken in by an option that npm kept for itself', async () => {
    const swallowed = { npm_lifecycle_event: 'build', npm_config_content: '../our-club' };
    const { code, error } = await build(join(folder, 'swallowed'), [], swallowed);
    expect(code).toBe(2);
    expect(error).toContain(
      'npm kept the option --content for itself. Write `--` before the options: `npm run build -- --content …`.',
    );
  });

  it('killed with the old site aside is put right by the next command, even one that fails', async () => {
    const before = await bytesOf(out());
    const args = ['old-aside', '--content', content(), '--out', out(), '--now', '2027-06-01'];
    const killed = spawnSync(process.execPath, [join(import.meta.dirname, 'killed-build.ts'), ...args]);
    expect(killed.signal).toBe('SIGKILL');
    expect(existsSync(out())).toBe(false);
    expect((await build(out(), ['--strict'])).code).toBe(1);
    expect(await bytesOf(out())).toEqual(before);
    expect(readdirSync(folder).filter((name) => name.startsWith('.'))).toEqual([]);
  });

  it('does not lose an address: a removed entry stops it and the last site stays', async () => {
    const before = await bytesOf(out());
    rmSync(join(content(), 'entries/summer/moth'), { recursive: true });
    const { code, error } = await build(out());
    expect(code).toBe(1);
    expect(error).toContain('The address /entries/summer/moth/ was in the last build and leads nowhere now.');
    expect(error).toContain('Not built:');
    expect(await bytesOf(out())).toEqual(before);
  });

  it('takes the list of addresses from elsewhere', async () => {
    const list = join(folder, 'addresses.json');
    writeFileSync(list, '{"format":1,"addresses":["/once/"]}');
    const { code, error } = await build(join(folder, 'third'), ['--previous', list]);
    expect(code).toBe(1);
    expect(error).toContain('The address /once/ was in the last build');
  });
});

describe('a wrong use of build', () => {
  it.each([
    [['--site', 'ftp://x.example'], 'The option --site takes the web address the site will have'],
    [['--previous', 'nowhere.json'], 'is no list of addresses'],
    [['page.md'], '`build` takes options only, but "page.md" was given.'],
  ])('%j ends with 2 and a sentence', async (args, sentence) => {
    const { code, error } = await build(join(folder, 'fourth'), args);
    expect(code).toBe(2);
    expect(error).toContain(sentence);
  });

  it('never builds over what is not a site, nor over its own content', async () => {
    const mine = join(folder, 'mine');
    mkdirSync(mine);
    writeFileSync(join(mine, 'thesis.txt'), 'x');
    expect(await build(mine)).toMatchObject({ code: 2 });
    expect(await build(folder)).toMatchObject({ code: 2 });
    expect(await build(join(content(), 'dist'))).toMatchObject({ code: 2 });
    expect(readFileSync(join(mine, 'thesis.txt'), 'utf8')).toBe('x');
  });
});
