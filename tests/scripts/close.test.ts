import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, beforeEach, describe, expect, it } from 'vitest';
import { call } from './called.ts';
import { entryText, writeSmallClub } from './small-club.ts';

// The small club's challenge closes on 30 September 2027 and says nothing of handing in, protests or a final day.
const parent = mkdtempSync(join(tmpdir(), 'last-turn-close-'));
let club = '';
let count = 0;

beforeEach(async () => {
  count += 1;
  club = join(parent, String(count));
  await writeSmallClub(club);
});
afterAll(() => rmSync(parent, { recursive: true, force: true }));

const close = (...args: string[]) => call('close', ['--content', club, ...args]);
const result = () => join(club, 'results/summer.json');

function write(file: string, text: string): void {
  mkdirSync(dirname(join(club, file)), { recursive: true });
  writeFileSync(join(club, file), text);
}

describe('close', () => {
  it('freezes nothing before the day after the last deadline', async () => {
    const { code, error } = await close('summer', '--now', '2027-09-30');
    expect(code).toBe(1);
    expect(error).toContain('The result of summer can be frozen from 2027-10-01 on, and it is 2027-09-30.');
    expect(existsSync(result())).toBe(false);
  });

  it('waits for the days that the rules set for protests', async () => {
    const rules = readFileSync(join(club, 'challenges/summer.md'), 'utf8');
    write(
      'challenges/summer.md',
      rules.replace('closes: 2027-09-30', 'closes: 2027-09-30\nprotests: 14 days'),
    );
    // 30 September and 14 days are 14 October: the day after it is the first.
    expect((await close('summer', '--now', '2027-10-14')).error).toContain(
      'can be frozen from 2027-10-15 on',
    );
  });

  it('lists the flights that wait for a ruling, and freezes none of it', async () => {
    const { code, error } = await close('summer', '--now', '2027-10-01');
    expect(code).toBe(1);
    expect(error).toMatch(
      /^2 flights wait for a ruling:\n {2}lantern flight 1, 48\.3 s\n {2}moth flight 1, /,
    );
    expect(error).toContain('--leave-provisional');
    expect(existsSync(result())).toBe(false);
  });

  it('freezes the result once, leaving those provisional where it is told to', async () => {
    const first = await close('summer', '--now', '2027-10-01', '--leave-provisional');
    expect([first.code, first.error]).toEqual([0, '']);
    expect(first.out).toContain('The result of Summer is frozen as of 2027-10-01, in results/summer.json');
    const text = readFileSync(result(), 'utf8');
    expect(JSON.parse(text)).toMatchObject({
      format: 1,
      closed: '2027-10-01',
      challenge: { state: 'final' },
    });
    const again = await close('summer', '--now', '2027-10-02', '--leave-provisional');
    expect(again.code).toBe(2);
    expect(again.error).toContain('The result of summer is frozen already');
    expect(readFileSync(result(), 'utf8')).toBe(text);
    const { out } = await call('check', ['--content', club, '--now', '2027-11-01', '--format', 'json']);
    expect(JSON.parse(out).problems).toEqual([]);
  });

  it('prints what it would freeze, and writes nothing', async () => {
    const { code, out } = await close('summer', '--now', '2027-10-01', '--leave-provisional', '--dry-run');
    expect(code).toBe(0);
    expect(JSON.parse(out).entries.map(({ id }: { id: string }) => id)).toEqual(['lantern', 'moth']);
    expect(existsSync(result())).toBe(false);
  });

  it('freezes nobody out who cannot be read, unless that is said', async () => {
    write('entries/summer/moth/entry.md', entryText('Moth', 'sal', '').replace('168 g', '168'));
    const refused = await close('summer', '--now', '2027-10-01', '--leave-provisional');
    expect(refused.code).toBe(1);
    expect(refused.error).toContain('entries/summer/moth/entry.md:6:19 error missing-unit');
    expect(refused.error).toContain('would be missing from it for good');
    const stranger = await close(
      'summer',
      '--now',
      '2027-10-01',
      '--leave-provisional',
      '--without',
      'lantern',
    );
    expect([stranger.code, stranger.error]).toEqual([
      2,
      expect.stringContaining('--without names "lantern", which can be read or is not there'),
    ]);
    const without = await close('summer', '--now', '2027-10-01', '--leave-provisional', '--without', 'moth');
    expect([without.code, without.error]).toEqual([0, '']);
  });

  it('freezes nothing while a file of rulings cannot be read', async () => {
    write(
      'rulings/summer/lantern.md',
      '---\nflights: [{ flight: 1, verdict: fine, by: otter, date: 2027-06-01 }]\n---\n',
    );
    const { code, error } = await close('summer', '--now', '2027-10-01', '--leave-provisional');
    expect([code, error]).toEqual([1, expect.stringContaining('rulings/summer/lantern.md:2:')]);
  });

  it.each([
    [[], '`close` takes one challenge'],
    [['sumer'], 'There is no challenge "sumer"; there is summer. Did you mean "summer"?'],
    [['summer', 'winter'], '`close` takes one challenge'],
  ])('called with %j says what it takes', async (args, sentence) => {
    const { code, error } = await close(...args, '--now', '2027-10-01');
    expect([code, error]).toEqual([2, expect.stringContaining(sentence)]);
  });
});
