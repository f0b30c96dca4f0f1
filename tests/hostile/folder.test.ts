import { spawnSync } from 'node:child_process';
import { mkdirSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readContent } from '../../src/entries/folder/read-folder.ts';
import { contentOf, entryFile, inFolder, placesOf, soundFolder } from '../entries/content-folder.ts';

const at = 'entries/haul/plover/';
const withPlover = (...lines: string[]) => ({ [`${at}entry.md`]: entryFile('Plover', ...lines) });

describe('a way out of the folder', () => {
  it.each([
    '../../../../etc/passwd.jpg',
    '/etc/passwd.jpg',
    'C:\\windows\\a.jpg',
    '..\\a.jpg',
    '\\\\host\\share\\a.jpg',
    'file:///etc/passwd.jpg',
    'https://x.example/a.jpg',
    '..jpg',
    '.hidden.jpg',
    'a/b.jpg',
  ])('is no name of a photo: %j', async (name) => {
    const content = await contentOf(withPlover(`photos: [{ file: ${JSON.stringify(name)}, alt: a }]`));
    expect(content.problems.map(({ code }) => code)).toEqual(['photo-name']);
    expect(content.entries[0]?.photos).toEqual([]);
  });

  it.each(['../../site.csv', '/proc/self/environ.csv', 'CON:.csv/x'])(
    'is no name of a log: %j',
    async (name) => {
      const file = entryFile('Plover').replace(
        '[{ count: 2 }]',
        `[{ count: 2, thrust-log: ${JSON.stringify(name)} }]`,
      );
      const content = await contentOf({ [`${at}entry.md`]: file });
      expect(content.problems.map(({ code }) => code)).toEqual(['log-name']);
    },
  );

  it('by a link is not taken: to a file, a folder, itself or nowhere, as entry, photo, log or challenge', async () => {
    await inFolder(soundFolder, async (directory) => {
      const link = (target: string, path: string) => {
        mkdirSync(join(directory, path, '..'), { recursive: true });
        symlinkSync(target, join(directory, path));
      };
      link('/etc/passwd', `${at}photo.jpg`);
      link('/etc/passwd', `${at}log.csv`);
      link('/etc/passwd', 'entries/haul/teal/entry.md');
      link('/etc', 'entries/haul/heron');
      link('..', 'entries/haul/loop');
      link('self', 'entries/haul/self');
      link('/nowhere', 'challenges/other.md');
      spawnSync('mkfifo', [join(directory, 'pages.md')]);
      writeFileSync(
        join(directory, `${at}entry.md`),
        entryFile('Plover', 'photos: [{ file: photo.jpg, alt: a }]').replace(
          '[{ count: 2 }]',
          '[{ count: 2, thrust-log: log.csv }]',
        ),
      );
      const content = await readContent(directory);
      expect(content.entries.map(({ value, photos, logs }) => [value.id, photos, logs.thrust.size])).toEqual([
        ['plover', [], 0],
      ]);
      expect(JSON.stringify(content)).not.toContain('root:');
      const links = content.problems
        .filter(({ code }) => code === 'link-not-followed')
        .map(({ file }) => file);
      expect(links).toEqual([
        'challenges/other.md',
        'entries/haul/heron',
        'entries/haul/loop',
        `${at}log.csv`,
        `${at}photo.jpg`,
        'entries/haul/self',
        'entries/haul/teal/entry.md',
        'pages.md',
      ]);
    });
  });
});

describe('names of files', () => {
  it('that no address can hold, or that another computer cannot keep, are refused', async () => {
    const names = [
      'con',
      'nul',
      'Plover',
      'a b',
      '__proto__',
      '%2e%2e',
      'a\n::error::x',
      '-\u202etxt',
      'index',
      'x'.repeat(65),
    ];
    const files = Object.fromEntries(
      names.map((name) => [`entries/haul/${name}/entry.md`, entryFile('Teal')]),
    );
    const content = await contentOf(files);
    const refused = content.problems.filter(({ code }) =>
      ['bad-name', 'reserved-name', 'name-taken'].includes(code),
    );
    expect(new Set(refused.map(({ file }) => file))).toEqual(new Set(Object.keys(files)));
    expect(content.entries.map(({ value }) => value.id)).toEqual(['plover']);
  });

  it('of things every object has are names like any other', async () => {
    const content = await contentOf({
      'entries/haul/constructor/entry.md': entryFile('Constructor', 'onboard: [constructor]'),
      'challenges/tostring.md':
        '---\ntitle: T\nopens: 2027-03-01\ncloses: 2027-10-31\neligibility: { constructor: at least 1 m }\n---\n',
      'builders/valueof.md': '---\nname: V\n__proto__: { junior: true }\n---\n',
    });
    expect(placesOf(content).map((place) => place.replace(/:\d+$/, ''))).toEqual([
      'unknown-key builders/valueof.md:3',
      'unknown-figure challenges/tostring.md:5',
      'unknown-word entries/haul/constructor/entry.md:8',
    ]);
    expect(({} as { junior?: boolean }).junior).toBeUndefined();
  });
});

describe('a folder of very many or very deep things', () => {
  it('is read, and every file accounted for', async () => {
    const many = Object.fromEntries(Array.from({ length: 3000 }, (_, index) => [`${at}${index}.jpg`, 'x']));
    const deep = `${Array.from({ length: 60 }, (_, index) => `d${index}`).join('/')}/x.md`;
    const content = await contentOf({ ...many, [deep]: 'x' });
    expect(content.files).toHaveLength(3000 + 1 + Object.keys(soundFolder).length);
    expect(content.entries).toHaveLength(1);
  });
});

describe('bytes that are no text', () => {
  it.each([
    ['UTF-16 with its mark', Buffer.from(`\ufeff${entryFile('Plover')}`, 'utf16le'), 'not-utf-8'],
    ['UTF-16 without one', Buffer.from(entryFile('Plover'), 'utf16le'), 'no-front-matter'],
    ['Latin-1', Buffer.from(entryFile('Plövér'), 'latin1'), 'not-utf-8'],
    ['half a surrogate pair', Buffer.from([0x2d, 0x2d, 0x2d, 0x0a, 0xed, 0xa0, 0x80]), 'not-utf-8'],
    ['NUL', Buffer.from(entryFile('Plo\0ver')), 'forbidden-character'],
    ['ESC', Buffer.from(entryFile('\u001b]8;;https://x.example\u0007Plover')), 'forbidden-character'],
  ])('are refused with their place: %s', async (_, bytes, code) => {
    const content = await contentOf({ [`${at}entry.md`]: bytes });
    expect(content.problems.map((problem) => problem.code)).toContain(code);
    expect(
      content.problems.every(
        ({ file, line, column }) => file === `${at}entry.md` && line >= 1 && column >= 1,
      ),
    ).toBe(true);
    expect(content.leftOut).toEqual([{ challenge: 'haul', entry: 'plover' }]);
  });

  it('whatever they are, leave the other entries alone', async () => {
    const valid = Buffer.from(entryFile('Teal', 'flights: [{ number: 1, date: 2027-05-09, time: 12 s }]'));
    const change = fc.tuple(fc.nat(valid.length - 1), fc.integer({ min: 0, max: 255 }));
    const mutated = fc.array(change, { minLength: 1, maxLength: 4 }).map((changes) => {
      const bytes = Buffer.from(valid);
      for (const [index, byte] of changes) bytes[index] = byte;
      return bytes;
    });
    await fc.assert(
      fc.asyncProperty(fc.oneof(mutated, fc.uint8Array({ maxLength: 300 })), async (bytes) => {
        const content = await contentOf({ 'entries/haul/teal/entry.md': bytes });
        const ids = content.entries.map(({ value }) => value.id);
        expect(ids).toContain('plover');
        if (!ids.includes('teal'))
          expect(
            content.problems.some(
              ({ file, severity }) => file === 'entries/haul/teal/entry.md' && severity === 'error',
            ),
          ).toBe(true);
      }),
      { seed: 17, numRuns: 60 },
    );
  });
});

describe('a name that is not what it looks like', () => {
  // UTS #39: Latin "o" and Cyrillic "о" (U+043E) are confusable; U+200B and U+00AD are drawn as nothing.
  it.each([
    ['Pl\u043ever', true],
    ['Plo\u200bver', true],
    ['Plo\u00adver', true],
    ['\u200fPlover', true],
    ['Плавунчик', false],
    ['Plover Ω', false],
    ['Šárka 春', false],
    ['👩‍🔧 Plover', false],
  ])('is asked about, without a word of blame: %j', async (name, asked) => {
    const { problems, entries } = await contentOf({ [`${at}entry.md`]: entryFile(JSON.stringify(name)) });
    expect(problems.map(({ code, severity }) => `${severity} ${code}`)).toEqual(
      asked ? ['warning name-hard-to-read'] : [],
    );
    expect(entries).toHaveLength(1);
  });

  it('says where it is and what to do', async () => {
    const { problems } = await contentOf({ [`${at}entry.md`]: entryFile('Pl\u043ever') });
    expect(problems[0]?.message).toBe(
      '`name` has letters of the alphabets Latin and Cyrillic in one word, so it cannot be told from others or searched for. If a slip of the keyboard put it there, write the name anew.',
    );
  });
});
