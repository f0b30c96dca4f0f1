import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, beforeEach, describe, expect, it, test, vi } from 'vitest';
import { main as checkFolder } from '../../scripts/check.ts';
import { main as makeNew } from '../../scripts/new.ts';
import { run, writeSmallClub } from './small-club.ts';

// Everything is written into an invented club. What a file must hold is written out by hand from content format 1.
let folder = '';
const at = (file: string) => join(folder, 'club', file);
const read = (file: string) => readFileSync(at(file), 'utf8');
/** Runs a command in this process, where nobody sits at a terminal. */
async function here(main: (argv: readonly string[]) => Promise<number>, argv: readonly string[]) {
  const texts = { out: '', error: '' };
  const keep = (of: keyof typeof texts) => (text: string | Uint8Array) => {
    texts[of] += String(text);
    return true;
  };
  const out = vi.spyOn(process.stdout, 'write').mockImplementation(keep('out'));
  const error = vi.spyOn(process.stderr, 'write').mockImplementation(keep('error'));
  try {
    const code = await main(argv);
    return { code, ...texts };
  } finally {
    out.mockRestore();
    error.mockRestore();
  }
}
const options = () => ['--content', join(folder, 'club'), '--now', '2027-06-01'];
const make = (...args: string[]) => here(makeNew, [...args, ...options()]);
const check = (file: string) => here(checkFolder, [at(file), '--now', '2027-06-01']);
const everything = () => readdirSync(folder, { recursive: true }).toSorted();
/** The fields of a file, without the remarks that offer more. */
const fields = (file: string) =>
  read(file)
    .split('\n')
    .filter((line) => !/^ *#/.test(line))
    .join('\n')
    .split('---\n')[1];

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'last-turn-new-'));
});
beforeEach(async () => {
  rmSync(join(folder, 'club'), { recursive: true, force: true });
  await writeSmallClub(join(folder, 'club'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const stated = [
  ...['--name', 'Slow Lantern', '--builder', '{ handle: pip, name: Pip Arkwright }', '--control', 'free'],
  ...['--span', '1.80 m ± 4 mm', '--chord', '150 mm', '--airframe', '168 g', '--count', '1'],
  ...[
    '--strip',
    '{ width: 1/8 in, thickness: 1.1 mm }',
    '--strands',
    '12',
    '--length',
    '620 mm',
    '--rubber',
    '24.2 g',
  ],
];

describe('an entry', () => {
  const file = 'entries/summer/slow-lantern/entry.md';

  it('with what is needed is written clean', async () => {
    const { code, out, error } = await make(
      'entry',
      'summer/slow-lantern',
      ...stated,
      '--onboard',
      'release,locator',
    );
    expect({ code, error }).toEqual({ code: 0, error: '' });
    expect(fields(file)).toBe(`name: Slow Lantern
builder: { handle: pip, name: Pip Arkwright }
entered: 2027-06-01
control: free
onboard: [release, locator]
wing:
  span: 1.80 m ± 4 mm
  chord: 150 mm
mass: { airframe: 168 g }
motors:
  - count: 1
    skein:
      strip: { width: 1/8 in, thickness: 1.1 mm }
      strands: 12
      length: 620 mm
      mass: 24.2 g
`);
    expect(out).toMatch(/^Written to entries\/summer\/slow-lantern\/entry\.md\.\n/);
    expect(out).toContain('finds nothing wrong with it.\n');
    expect((await check(file)).out).toBe('Checked 1 entry, no errors.\n');
  });

  it('with nothing given lists what is to be filled in, and check names the same', async () => {
    const { code, out } = await make(
      'entry',
      'summer/slow-lantern',
      '--name',
      'Slow Lantern',
      '--chord',
      '150 mm',
    );
    const named = [...out.matchAll(/^`([a-z.]+)` is missing/gm)].map(([, field]) => field);
    expect({ code, named }).toEqual({
      code: 0,
      named: ['builder', 'control', 'wing.span', 'mass', 'motors'],
    });
    const { code: checked, out: said } = await check(file);
    const told = [...said.matchAll(/^ {2}`([a-z.]+)` is missing/gm)].map(([, field]) => field);
    expect({ checked, told: told.toSorted() }).toEqual({ checked: 1, told: named.toSorted() });
    expect(read(file)).toContain('\nwing:\n  # span: 3.20 m ± 5 mm   # needed: Projected, from tip to tip\n');
  });

  it('is written by the command as npm starts it', async () => {
    const { code, out } = await run('new', ['entry', 'summer/slow-lantern', ...stated, ...options()]);
    expect(code).toBe(0);
    expect(out).toMatch(/^Written to entries\/summer\/slow-lantern\/entry\.md\.\n/);
    expect(existsSync(at(file))).toBe(true);
  });

  it('takes any field by its name', async () => {
    await make(
      'entry',
      'summer/slow-lantern',
      ...stated,
      '--set',
      'wing.incidence=3°',
      '--set',
      'motors.propeller.after = folds',
    );
    expect(fields(file)).toContain('  incidence: 3°\n');
    expect(fields(file)).toContain('    propeller: { after: folds }\n');
  });

  it('is refused with the sentence of check where a value is wrong, and nothing is written', async () => {
    const before = everything();
    const { code, out, error } = await make(
      'entry',
      'summer/slow-lantern',
      '--span',
      '320',
      '--control',
      'fre',
    );
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(error).toBe(
      '`control`: "fre" is not a word known here. Write free or guided. Did you mean "free"?\n' +
        '`wing.span`: "320" has no unit; write one of mm, cm, dm, m, in, ft or yd behind the number, such as "3.20 m".\n' +
        'Nothing is written.\n`npm run new -- entry --help` says what it takes.\n',
    );
    expect(everything()).toEqual(before);
  });

  it('is only shown on a dry run', async () => {
    const before = everything();
    const { code, out } = await make('entry', 'summer/slow-lantern', ...stated, '--dry-run');
    expect(code).toBe(0);
    expect(out).toContain(
      'Nothing is written. entries/summer/slow-lantern/entry.md would be:\n\n---\nname: Slow Lantern\n',
    );
    expect(everything()).toEqual(before);
  });

  it('never takes the place of one that is there', async () => {
    const before = read('entries/summer/moth/entry.md');
    const { code, error } = await make('entry', 'summer/moth', ...stated);
    expect(code).toBe(2);
    expect(error).toContain('There is entries/summer/moth/entry.md already, and it is left as it is.');
    expect(read('entries/summer/moth/entry.md')).toBe(before);
  });

  const hostile: readonly (readonly [string, string])[] = [
    ['../x', 'There is no challenge "..";'],
    ['summer/../../x', 'does not name an entry'],
    ['summer/..', 'The name ".." is part of an address'],
    ['summer/', 'The name "" is part of an address'],
    ['summer/Grosse Möwe', 'such as "grosse-mowe".'],
    ['summer/CON', 'such as "con".'],
    ['summer/con', 'that of a device on Windows'],
    ['summer/api', 'one the site itself needs'],
    [`summer/${'a'.repeat(65)}`, 'at most 64 of them'],
    ['summer/a\\b', 'such as "a-b".'],
    ['summer/a\u001b[2Jb', '<U+001B>'],
    ['sumer/x', 'There is no challenge "sumer"; there is summer. Did you mean "summer"?'],
    ['lantern', 'write the name of its challenge, a stroke and its own name, such as summer/lantern.'],
  ];
  test.each(hostile)('named %j is refused with a sentence', async (name, sentence) => {
    const before = everything();
    const { code, error } = await make('entry', name, ...stated);
    expect(code).toBe(2);
    expect(error).toContain(sentence);
    expect(everything()).toEqual(before);
  });

  it('says which limits cannot be checked on what is told of it', async () => {
    writeFileSync(
      at('challenges/summer.md'),
      read('challenges/summer.md').replace(
        'target:',
        'eligibility: { span: at least 0.9 m, flying-mass: at most 5 kg }\ntarget:',
      ),
    );
    const light = ['--name', 'Slow Lantern', '--builder', 'pip', '--control', 'free', '--span', '1.80 m'];
    const { code, out } = await make(
      'entry',
      'summer/slow-lantern',
      ...[...light, '--airframe', '168 g', '--count', '1'],
    );
    expect(code).toBe(0);
    expect(out).toMatch(
      /\nUntil it says more, no flight of it can count:\n {2}the flying mass cannot be checked: needs .*skein.*\n/,
    );
    expect(out).not.toContain('the span cannot be checked');
    const whole = await make('entry', 'summer/other-lantern', ...stated);
    expect(whole.out).not.toContain('cannot be checked');
  });

  it('of a challenge whose result is final is refused', async () => {
    mkdirSync(at('results'));
    writeFileSync(at('results/summer.json'), '{}');
    const before = everything();
    const { code, error } = await make('entry', 'summer/slow-lantern', ...stated);
    expect(code).toBe(2);
    expect(error).toContain('The result of summer is final, so no aircraft enters it any more.');
    expect(everything()).toEqual(before);
  });

  it('is not written through a link that leads out of the content folder', async () => {
    mkdirSync(join(folder, 'elsewhere'), { recursive: true });
    rmSync(at('entries/summer'), { recursive: true });
    symlinkSync(join(folder, 'elsewhere'), at('entries/summer'));
    const { code, error } = await make('entry', 'summer/slow-lantern', ...stated);
    expect({ code, there: readdirSync(join(folder, 'elsewhere')) }).toEqual({ code: 2, there: [] });
    expect(error).toContain('a link on the way leads out of it.');
  });
});

describe('a flight', () => {
  const file = 'entries/summer/moth/entry.md';

  it('is written behind the last under the next number, and every other letter stays', async () => {
    const before = read(file).replaceAll('\n', '\r\n').replace('control: free', 'control: free   # as ever');
    writeFileSync(at(file), before);
    const { code, out } = await make(
      'flight',
      'summer/moth',
      ...['--date', '2027-05-29', '--watches', '41.6 s, 41.8 s', '--turns', '54x10', '--launch', 'hand'],
      ...[
        '--evidence',
        'https://video.example/moth-2',
        '--timekeepers',
        'otter,heron',
        '--note',
        'Reeds: wet',
      ],
    );
    expect(code).toBe(0);
    expect(out).toMatch(/^Flight 2 is written into entries\/summer\/moth\/entry\.md\.\n/);
    const flight = `  - number: 2
    date: 2027-05-29
    watches: [41.6 s, 41.8 s]
    turns: 54x10
    launch: hand
    timekeepers: [otter, heron]
    evidence: https://video.example/moth-2
    note: "Reeds: wet"
`.replaceAll('\n', '\r\n');
    expect(read(file)).toContain(flight);
    expect(read(file).replace(flight, '')).toBe(before);
    expect((await check(file)).code).toBe(0);
  });

  it('begins the list where there is none, after the motors', async () => {
    await make('entry', 'summer/slow-lantern', ...stated);
    await make('flight', 'summer/slow-lantern', '--date', '2027-05-29', '--time', '41.7s');
    expect(fields('entries/summer/slow-lantern/entry.md')).toMatch(
      /\n {6}mass: 24\.2 g\nflights:\n {2}- \{ number: 1, date: 2027-05-29, time: 41\.7s \}\n$/,
    );
    expect((await check('entries/summer/slow-lantern/entry.md')).out).toBe('Checked 1 entry, no errors.\n');
  });

  it('never gets a number that was ruled on or frozen, whatever stands in the file', async () => {
    mkdirSync(at('rulings/summer'), { recursive: true });
    writeFileSync(
      at('rulings/summer/moth.md'),
      '---\nflights:\n  - { flight: 4, verdict: void, by: otter }\n---\n',
    );
    expect((await make('flight', 'summer/moth', '--date', '2027-05-29', '--time', '9 s')).out).toContain(
      'Flight 5 ',
    );
    mkdirSync(at('results'));
    writeFileSync(at('results/summer.json'), '{"entries":[{"entry":"moth","flights":[{"number":8}]}]}');
    expect((await make('flight', 'summer/moth', '--date', '2027-05-29', '--time', '9 s')).out).toContain(
      'Flight 9 ',
    );
  });

  it.each([[], ['--dry-run']])(
    'of a day that has not come gets the same warning, written or not: %j',
    async (...dry) => {
      const { code, out } = await make(
        'flight',
        'summer/moth',
        '--date',
        '2027-06-09',
        '--time',
        '9 s',
        ...dry,
      );
      expect(code).toBe(0);
      expect(out).toContain(
        'Flight 2 is dated 2027-06-09, and today is 2027-06-01. Write the day on which it was flown.',
      );
    },
  );

  it('that lacks its date or its time is refused, with what is missing', async () => {
    const before = read(file);
    const { code, error } = await make('flight', 'summer/moth', '--turns', '400');
    expect(code).toBe(2);
    expect(error).toContain('`date` in flight 2 is missing');
    expect(error).toContain('flight 2 has no time.');
    expect(read(file)).toBe(before);
  });

  it('with a wrong value is refused with the sentence of check', async () => {
    const { code, error } = await make('flight', 'summer/moth', '--date', '2027-05-32', '--time', '41.7');
    expect(code).toBe(2);
    expect(error).toContain('`date` in flight 2');
    expect(error).toContain('`time` in flight 2: "41.7" has no unit');
  });

  it('goes into an entry with mistakes of its own, which are not held against it', async () => {
    writeFileSync(at(file), read(file).replace('control: free', 'control: fre'));
    const { code, out } = await make('flight', 'summer/moth', '--date', '2027-05-29', '--time', '41.7 s');
    expect(code).toBe(0);
    expect(out).toContain('"fre" is not a word known here.');
    expect(read(file)).toContain('{ number: 2, date: 2027-05-29, time: 41.7 s }');
  });

  it('of an aircraft that is not there names those that are', async () => {
    const { code, error } = await make('flight', 'summer/mooth', '--date', '2027-05-29', '--time', '41.7 s');
    expect(code).toBe(2);
    expect(error).toContain(
      'There is no aircraft "mooth" in summer; there is lantern, moth. Did you mean "moth"?',
    );
  });

  it('is not written into a file that cannot be read', async () => {
    writeFileSync(at(file), 'no fields\n');
    const { code, error } = await make('flight', 'summer/moth', '--date', '2027-05-29', '--time', '41.7 s');
    expect({ code, now: read(file) }).toEqual({ code: 2, now: 'no fields\n' });
    expect(error).toContain('cannot be read, so nothing is written into it.');
  });
});

describe('a setup', () => {
  it('is written before the flights and is read clean', async () => {
    const file = 'entries/summer/moth/entry.md';
    const { code, out } = await make(
      'setup',
      'summer/moth',
      ...[
        '--id',
        'b',
        '--from',
        '2027-05-25',
        '--change',
        'New tailplane, 8 g lighter',
        '--airframe',
        '160 g',
      ],
      ...['--set', 'tailplane.area=6 dm2'],
    );
    expect(code).toBe(0);
    expect(out).toContain('Setup b is written into entries/summer/moth/entry.md.\n');
    expect(read(file)).toContain(
      '\nsetups:\n  - id: b\n    from: 2027-05-25\n    change: New tailplane, 8 g lighter\n    tailplane: { area: 6 dm2 }\n    mass: { airframe: 160 g }\nflights:\n',
    );
    expect((await check(file)).code).toBe(0);
  });

  it('that changes nothing is refused', async () => {
    const before = read('entries/summer/moth/entry.md');
    const { code, error } = await make('setup', 'summer/moth', '--id', 'b', '--from', '2027-05-25');
    expect(code).toBe(2);
    expect(error).toContain('A setup without a change is none. Say what was changed with --change');
    expect(read('entries/summer/moth/entry.md')).toBe(before);
  });

  it('with an id that is taken is refused', async () => {
    await make('setup', 'summer/moth', '--id', 'b', '--from', '2027-05-25', '--airframe', '160 g');
    const { code, error } = await make(
      'setup',
      'summer/moth',
      '--id',
      'b',
      '--from',
      '2027-05-26',
      '--airframe',
      '150 g',
    );
    expect(code).toBe(2);
    expect(error).toContain('Nothing is written.');
  });
});

describe('a challenge', () => {
  it('is written clean, with the rules that hold anyway and the others as remarks', async () => {
    const given = [
      '--title',
      'Winter 2027',
      '--opens',
      '2027-11-01',
      '--closes',
      '2028-02-28',
      '--target',
      '40 s',
    ];
    const { code } = await make('challenge', 'winter-2027', ...given, '--launch', 'hand, ground');
    expect(code).toBe(0);
    expect(fields('challenges/winter-2027.md')).toContain(
      'title: Winter 2027\nopens: 2027-11-01\ncloses: 2028-02-28\ntarget: { time: 40 s }\nflying:\n  launch: [hand, ground]\ntiming:\n',
    );
    for (const key of ['report-by', 'final', 'eligibility', 'tie-break', 'divisions', 'protests'])
      expect(read('challenges/winter-2027.md')).toMatch(new RegExp(`^# ${key}: `, 'm'));
    expect((await check('challenges/winter-2027.md')).out).toBe('Checked 0 entries, no errors.\n');
  });

  it('whose dates are in the wrong order is refused', async () => {
    const { code, error } = await make(
      'challenge',
      'winter',
      '--title',
      'W',
      '--opens',
      '2027-11-01',
      '--closes',
      '2027-02-28',
    );
    expect(code).toBe(2);
    expect(error).toContain('`closes`');
    expect(existsSync(at('challenges/winter.md'))).toBe(false);
  });

  it('keeps the other rules of scoring where one is given', async () => {
    await make(
      'challenge',
      'winter',
      '--title',
      'W',
      '--opens',
      '2027-11-01',
      '--closes',
      '2028-02-28',
      '--method',
      'sum',
    );
    expect(fields('challenges/winter.md')).toContain('scoring: { method: sum, provisional: apart }\n');
  });
});

describe('a batch of rubber', () => {
  const log = 'extension [mm],force [N]\n0,0\n100,1.2\n200,2.0\n300,2.9\n200,1.4\n100,0.7\n0,0\n';

  it('is written with its test, the log beside it', async () => {
    writeFileSync(join(folder, 'tan.csv'), log);
    const { code } = await make(
      'rubber',
      'tan',
      ...[
        '--label',
        'Tan, second box',
        '--width',
        '3.2 mm',
        '--thickness',
        '1.1 mm',
        '--log',
        join(folder, 'tan.csv'),
      ],
      ...['--length', '100 mm', '--mass', '0.33 g'],
    );
    expect(code).toBe(0);
    expect(fields('rubber/tan.md')).toBe(
      'label: Tan, second box\nstrip: { width: 3.2 mm, thickness: 1.1 mm }\nstretch-tests:\n  - { file: tan.csv, length: 100 mm, mass: 0.33 g }\n',
    );
    expect(read('rubber/tan.csv')).toBe(log);
    expect((await check('rubber/tan.md')).code).toBe(0);
  });

  it('leaves a log alone that is there already under the same name', async () => {
    mkdirSync(at('rubber'));
    writeFileSync(at('rubber/tan.csv'), 'mine');
    writeFileSync(join(folder, 'tan.csv'), log);
    const { code, error } = await make('rubber', 'tan', '--label', 'Tan', '--log', join(folder, 'tan.csv'));
    expect({ code, log: read('rubber/tan.csv'), made: existsSync(at('rubber/tan.md')) }).toEqual({
      code: 2,
      log: 'mine',
      made: false,
    });
    expect(error).toContain('There is rubber/tan.csv already, and it is left as it is.');
  });

  it('copies no log on a dry run', async () => {
    writeFileSync(join(folder, 'tan.csv'), log);
    await make(
      'rubber',
      'tan',
      '--label',
      'Tan',
      '--log',
      join(folder, 'tan.csv'),
      '--length',
      '100 mm',
      '--mass',
      '0.33 g',
      '--dry-run',
    );
    expect(existsSync(at('rubber'))).toBe(false);
  });
});

it('the commands of the README do what they say, one after another', async () => {
  const readme = readFileSync(join(import.meta.dirname, '../../README.md'), 'utf8');
  const commands = readme.match(/^npm run new -- (?!site ).*$/gm) ?? [];
  expect(commands).toHaveLength(5);
  const log = join(folder, 'tan-2.csv');
  writeFileSync(log, 'extension [mm],force [N]\n0,0\n100,1.2\n200,2.0\n100,0.7\n0,0\n');
  for (const command of commands) {
    const words = command.replace('npm run new -- ', '').match(/"[^"]*"|\S+/g) ?? [];
    const { code, error } = await make(
      ...words.map((word) => word.replaceAll('"', '').replace('tan-2.csv', log)),
    );
    expect({ command, code, error }).toEqual({ command, code: 0, error: '' });
  }
  const { out } = await here(checkFolder, [at(''), '--now', '2027-06-01']);
  expect(out).toBe('Checked 3 entries, no errors.\n');
});

describe('wrong use', () => {
  const cases: readonly (readonly [readonly string[], string])[] = [
    [['entrie', 'summer/x'], 'Did you mean entry?'],
    [['entry'], 'does not name an entry'],
    [['entry', 'summer/x', 'y'], '"y" is one word too many'],
    [['entry', 'summer/x', '--spam', '1 m'], 'Did you mean --span?'],
    [['entry', 'summer/x', '--set', 'wing.span'], 'takes a field and its value'],
    [['entry', 'summer/x', '--set', 'wing.spam=1 m'], 'Did you mean "span"?'],
    [['entry', 'summer/x', '--builder', 'pip', '--set', 'builder.name=Pip'], 'has no place yet'],
    [
      ['flight', 'summer/moth', '--note', 'a\u202eb'],
      '`note`: there is a character in it that has no place in a text (U+202E',
    ],
    [['flight', 'summer/moth', '--number', '3'], 'has no option --number'],
  ];
  test.each(cases)('%j is told in a sentence', async (args, sentence) => {
    const before = everything();
    const { code, error } = await make(...args);
    expect(code).toBe(2);
    expect(error).toContain(sentence);
    expect(everything()).toEqual(before);
  });

  it('a command that is asked for help lists its options with the words of the schema', async () => {
    const { code, out } = await here(makeNew, ['entry', '--help']);
    expect(code).toBe(0);
    expect(out).toContain('  --span           Projected, from tip to tip, such as 3.20 m ± 5 mm\n');
    expect((await here(makeNew, [])).out).toContain('npm run new -- flight <challenge>/<entry>');
  });
});
