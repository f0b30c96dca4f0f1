import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { call } from './called.ts';
import { entryText, writeSmallClub } from './small-club.ts';

// Everything is ruled in an invented club. What the file must hold is written out by hand from content format 1; the seal
// of its flight is that of the canonical JSON `{"date":"2027-05-22","number":1,"time":48.3,"turns":400}`, whose SHA-256
// `sha256sum` gives.
const seal = '1-0da1d6cdb7b9342b';
const facts = 'as-ruled: { setup: none, control: free }';

let folder = '';
const at = (file: string) => join(folder, 'club', file);
const rulings = () => at('rulings/summer/moth.md');
const ruling = (...args: string[]) =>
  call('ruling', ['--content', join(folder, 'club'), '--now', '2027-06-01', ...args]);
const written = () => readFileSync(rulings(), 'utf8');
const write = (path: string, text: string) => {
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, text);
};

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'last-turn-ruling-'));
  await writeSmallClub(join(folder, 'club'));
});
beforeEach(() => {
  rmSync(at('rulings'), { recursive: true, force: true });
  rmSync(at('results'), { recursive: true, force: true });
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe('a flight', () => {
  it('is accepted: a new file with seal and facts, and what that brings about', async () => {
    const { code, out, error } = await ruling(
      'summer/moth',
      '1',
      'accept',
      '--by',
      'otter',
      '--seen',
      'launch, landing',
    );
    expect({ code, error }).toEqual({ code: 0, error: '' });
    expect(written()).toBe(
      `---\nflights:\n  - flight: 1\n    verdict: accepted\n    by: otter\n    date: 2027-06-01\n` +
        `    seen: [launch, landing]\n    seal: ${seal}\n    ${facts}\n---\n`,
    );
    expect(out).toBe(
      'Flight 1 of "Moth" is ruled accepted by otter, dated 2027-06-01.\n' +
        'Flight 1 is now: accepted (was: provisional).\n' +
        '"Moth" has place 1, and had none.\n' +
        'Written to rulings/summer/moth.md.\n',
    );
    const check = await call('check', ['--content', join(folder, 'club'), '--now', '2027-06-01']);
    expect(check.out).toBe('Checked 2 entries, no errors.\n');
  });

  it('is accepted with a ruled time', async () => {
    await ruling(
      'summer/moth',
      '1',
      'accept',
      '--by',
      'otter',
      '--time',
      '43.1 s',
      '--reason',
      'Third watch.',
      '--date',
      '2027-05-30',
    );
    expect(written()).toContain(
      '    verdict: accepted\n    time: 43.1 s\n    reason: Third watch.\n    by: otter\n    date: 2027-05-30\n',
    );
  });

  it('is refused', async () => {
    const { out } = await ruling(
      'summer/moth',
      '1',
      'refuse',
      '--by',
      'otter',
      '--reason',
      'The landing is not on the video.',
    );
    expect(written()).toBe(
      `---\nflights:\n  - flight: 1\n    verdict: refused\n    reason: The landing is not on the video.\n` +
        `    by: otter\n    date: 2027-06-01\n    seal: ${seal}\n---\n`,
    );
    expect(out).toContain('Flight 1 is now: refused (was: provisional). The landing is not on the video.\n');
  });

  it('is void', async () => {
    const { out } = await ruling(
      'summer/moth',
      '1',
      'void',
      '--by',
      'otter',
      '--reason',
      'Struck by a kite.',
    );
    expect(written()).toContain('    verdict: void\n    reason: Struck by a kite.\n');
    expect(out).toContain('Flight 1 is now: void (was: provisional).');
  });

  it('that was ruled before keeps its earlier verdicts in order, and loses what belonged to them', async () => {
    write(
      rulings(),
      '---\n# by hand\nflights:\n  - flight: 1   # seen on site\n    verdict: refused\n    reason: No landing.\n    by: heron\n' +
        '    second: stoat\n    received: 2027-05-24\n    date: 2027-05-25\n    earlier: [{ verdict: void, by: stoat }]\n---\nKept.\n',
    );
    await ruling('summer/moth', '1', 'accept', '--by', 'otter', '--kept', 'https://video.example/kept');
    expect(written()).toBe(
      '---\n# by hand\nflights:\n  - flight: 1   # seen on site\n    verdict: accepted\n    by: otter\n' +
        '    received: 2027-05-24\n    date: 2027-06-01\n' +
        '    earlier: [{ verdict: void, by: stoat }, { verdict: refused, reason: No landing., by: heron, date: 2027-05-25 }]\n' +
        `    kept: https://video.example/kept\n    seal: ${seal}\n    ${facts}\n---\nKept.\n`,
    );
  });

  it('that was accepted and is refused no longer has facts, and says so to the board', async () => {
    await ruling('summer/moth', '1', 'accept', '--by', 'otter');
    const { out } = await ruling('summer/moth', '1', 'refuse', '--by', 'heron', '--reason', 'Seen again.');
    expect(written()).not.toContain('as-ruled');
    expect(written()).toContain('    earlier:\n      - { verdict: accepted, by: otter, date: 2027-06-01 }\n');
    expect(out).toMatch(/"Moth" has no place \(.*\); it had place 1\./);
  });

  it('of a model beyond the limits is written as accepted, and the reason why it does not count is given', async () => {
    const rules = readFileSync(at('challenges/summer.md'), 'utf8');
    writeFileSync(
      at('challenges/summer.md'),
      rules.replace(
        '\n---\nFly',
        '\neligibility: { span: at least 2 m }\nflying: { evidence: { shows: [launch, span] } }\n---\nFly',
      ),
    );
    const { code, out } = await ruling('summer/moth', '1', 'accept', '--by', 'otter', '--seen', 'launch');
    writeFileSync(at('challenges/summer.md'), rules);
    expect(code).toBe(0);
    expect(out).toMatch(/Flight 1 is now: does not count\. .*span.*2 m/);
    expect(out).toContain('Not in `seen`, and asked for by the challenge: span.\n');
  });
});

describe('a whole entry', () => {
  it('is inspected again and again: the list grows', async () => {
    await ruling('summer/moth', 'inspect', '--by', 'scales', '--span', '1.79 m', '--airframe', '170 g');
    expect(written()).toBe(
      '---\ninspected:\n  - { date: 2027-06-01, by: scales, span: 1.79 m, airframe: 170 g }\n---\n',
    );
    await ruling('summer/moth', 'inspect', '--by', 'scales', '--wing-area', '27 dm2', '--date', '2027-06-02');
    expect(written()).toBe(
      '---\ninspected:\n  - { date: 2027-06-01, by: scales, span: 1.79 m, airframe: 170 g }\n' +
        '  - { date: 2027-06-02, by: scales, wing-area: 27 dm2 }\n---\n',
    );
  });

  it('is disqualified once', async () => {
    await ruling('summer/moth', '1', 'accept', '--by', 'otter');
    const { out } = await ruling(
      'summer/moth',
      'disqualify',
      '--by',
      'otter',
      '--reason',
      'A stabiliser was carried.',
    );
    expect(written()).toContain(
      '\ndisqualified: { reason: A stabiliser was carried., by: otter, date: 2027-06-01 }\n---\n',
    );
    expect(out).toMatch(/"Moth" has no place \(.*\); it had place 1\./);
    const again = await ruling('summer/moth', 'disqualify', '--by', 'heron', '--reason', 'Other.');
    expect(again.code).toBe(1);
    expect(again.error).toContain(
      '"Moth" is disqualified already, since 2027-06-01 by otter: A stabiliser was carried.',
    );
  });
});

describe('a disqualification', () => {
  it('is lifted: the fields forget it, the words below keep it, the place is back', async () => {
    write(
      rulings(),
      `---\nflights: [{ flight: 1, verdict: accepted, by: otter, date: 2027-05-30, seal: ${seal}, ${facts} }]\n` +
        'disqualified: { reason: A stabiliser was carried, by: otter, date: 2027-05-31 }\n---\nSeen on site.\n',
    );
    const { code, out } = await ruling(
      'summer/moth',
      'reinstate',
      '--by',
      'heron',
      '--reason',
      'It was\nballast.',
    );
    expect(code).toBe(0);
    expect(out).toContain('"Moth" is reinstated by heron, dated 2027-06-01.\n');
    expect(out).toContain('"Moth" has place 1, and had none.\n');
    expect(written()).toBe(
      `---\nflights: [{ flight: 1, verdict: accepted, by: otter, date: 2027-05-30, seal: ${seal}, ${facts} }]\n---\n` +
        'Seen on site.\n\nDisqualified on 2027-05-31 by otter: A stabiliser was carried. ' +
        'Lifted on 2027-06-01 by heron: It was ballast.\n',
    );
  });

  it('that is all there is leaves a file that is read, and can be imposed again', async () => {
    await ruling('summer/moth', 'disqualify', '--by', 'otter', '--reason', 'Ballast missing.');
    await ruling('summer/moth', 'reinstate', '--by', 'heron', '--reason', 'It was found.');
    const { code } = await ruling('summer/moth', 'disqualify', '--by', 'otter', '--reason', 'It was lead.');
    expect(code).toBe(0);
    expect(written()).toContain('disqualified: { reason: It was lead., by: otter, date: 2027-06-01 }');
    expect(written()).toContain('Lifted on 2027-06-01 by heron: It was found.\n');
  });

  it('that there is none of is not lifted', async () => {
    const { code, error } = await ruling('summer/moth', 'reinstate', '--by', 'heron', '--reason', 'x');
    expect({ code, error }).toEqual({
      code: 1,
      error: '"Moth" is not disqualified: there is nothing to lift.\n',
    });
  });
});

describe('a day before the flight', () => {
  it('is said of the decision and of the handing in', async () => {
    const told = await ruling('summer/moth', '1', 'accept', '--by', 'otter', '--date', '2027-05-20');
    expect(told.out).toContain('The flight is dated 2027-05-22, after 2027-05-20: correct whichever day');
    const early = await ruling('summer/moth', '1', 'accept', '--by', 'otter', '--received', '2027-05-01');
    expect(early.out).toContain('The flight is dated 2027-05-22, after 2027-05-01');
    const right = await ruling('summer/moth', '1', 'accept', '--by', 'otter', '--received', '2027-05-22');
    expect(right.out).not.toContain('is dated');
  });
});

describe('a dry run', () => {
  it('prints the file as it would be and writes nothing', async () => {
    const { out } = await ruling(
      'summer/moth',
      '1',
      'void',
      '--by',
      'otter',
      '--reason',
      'Kite.',
      '--dry-run',
    );
    expect(out).toContain(
      'Nothing is written. rulings/summer/moth.md would be:\n\n---\nflights:\n  - { flight: 1, verdict: void, ',
    );
    expect(existsSync(rulings())).toBe(false);
  });
});

describe('nothing is ruled', () => {
  const refusals: readonly (readonly [string, readonly string[], number, string])[] = [
    [
      'a challenge there is none of',
      ['sumer/moth', '1', 'accept', '--by', 'o'],
      1,
      'There is no challenge "sumer"; there is summer. Did you mean "summer"?',
    ],
    [
      'an entry there is none of',
      ['summer/moht', '1', 'accept', '--by', 'o'],
      1,
      'There is no entry "moht" in summer. Did you mean "moth"?',
    ],
    [
      'half an address',
      ['moth', '1', 'accept', '--by', 'o'],
      1,
      '"moth" names no entry: write the challenge and the entry, such as slow-thread-2026/calico.',
    ],
    [
      'a flight there is none of',
      ['summer/moth', '3', 'accept', '--by', 'o'],
      1,
      '"Moth" has no flight 3; it has the flights 1.',
    ],
    [
      'a number that is none',
      ['summer/moth', 'one', 'accept', '--by', 'o'],
      2,
      'After the entry stands the number of a flight, `inspect`, `disqualify` or `reinstate`, but "one" was given.',
    ],
    [
      'another word',
      ['summer/moth', '1', 'approve', '--by', 'o'],
      2,
      'After the flight stands accept, refuse or void, but "approve" was given.',
    ],
    [
      'a value without its quotes',
      ['summer/moth', '1', 'accept', '--by', 'o', '--time', '43.1', 's'],
      2,
      '"s" is one word too many; put quotes around a value with spaces.',
    ],
    [
      'nobody',
      ['summer/moth', '1', 'accept'],
      2,
      'Say who decides with --by and a handle, such as --by otter: neither the site nor this machine knows it.',
    ],
    [
      'a refusal without a reason',
      ['summer/moth', '1', 'refuse', '--by', 'o'],
      2,
      '`refuse` needs a reason that the builder can read, such as --reason "The landing is not on the video."',
    ],
    [
      'a lifting without a reason',
      ['summer/moth', 'reinstate', '--by', 'o'],
      2,
      '`reinstate` needs a reason that the builder can read',
    ],
    [
      'a void flight with a time',
      ['summer/moth', '1', 'void', '--by', 'o', '--reason', 'x', '--time', '3 s'],
      2,
      'Only an acceptance can carry a ruled time; leave out --time with `void`.',
    ],
    [
      'an inspection of nothing',
      ['summer/moth', 'inspect', '--by', 'o'],
      2,
      'An inspection needs at least one measure: --span, --wing-area, --airframe, --rubber, --balance.',
    ],
    [
      'a measure of a flight',
      ['summer/moth', '1', 'accept', '--by', 'o', '--span', '2 m'],
      2,
      'The option --span has no meaning with `accept`.',
    ],
    [
      'a time without a unit',
      ['summer/moth', '1', 'accept', '--by', 'o', '--time', '43.1'],
      1,
      'Nothing is written: the ruling would not be read with what was given.',
    ],
    [
      'a day that is none',
      ['summer/moth', '1', 'accept', '--by', 'o', '--date', '2027-02-30'],
      1,
      'Nothing is written: the ruling would not be read with what was given.',
    ],
  ];

  it.each(refusals)('for %s', async (_, args, code, sentence) => {
    const told = await ruling(...args);
    expect(told.error).toContain(sentence);
    expect(told.code).toBe(code);
    expect(existsSync(rulings())).toBe(false);
  });

  it('in a challenge that is final', async () => {
    write(at('results/summer.json'), '{}');
    const { code, error } = await ruling('summer/moth', '1', 'accept', '--by', 'otter');
    expect(code).toBe(1);
    expect(error).toBe(
      'The challenge summer is final: its result is frozen in results/summer.json, and no ruling changes it any more.\n',
    );
  });

  it('in a file that cannot be read: it says where, and no letter of it is lost', async () => {
    const broken = '---\nflights:\n  - flight: 1\n    verdict: aproved\n---\nMine.\n';
    write(rulings(), broken);
    const { code, error } = await ruling('summer/moth', '1', 'accept', '--by', 'otter');
    expect(code).toBe(1);
    expect(error).toContain('rulings/summer/moth.md:4:14 error unknown-word');
    expect(error).toContain(
      'rulings/summer/moth.md cannot be read, so nothing is ruled and nothing is written. Mend it first.\n',
    );
    expect(written()).toBe(broken);
  });

  it('on an entry that cannot be read', async () => {
    const sound = entryText('Moth', 'sal', '');
    write(at('entries/summer/moth/entry.md'), sound.replace('168 g', '168'));
    const { code, error } = await ruling('summer/moth', '1', 'accept', '--by', 'otter');
    write(at('entries/summer/moth/entry.md'), sound);
    expect(code).toBe(1);
    expect(error).toContain('entries/summer/moth/entry.md:6:19 error missing-unit');
  });
});
