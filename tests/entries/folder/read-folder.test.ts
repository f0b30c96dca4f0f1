import { readdirSync, symlinkSync } from 'node:fs';
import { join } from 'node:path';
import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { checkListing } from '../../../src/entries/folder/listing.ts';
import { readContent } from '../../../src/entries/folder/read-folder.ts';
import { contentOf, entryFile, inFolder, placesOf, soundFolder } from '../content-folder.ts';

const photo = await sharp({ create: { width: 9, height: 6, channels: 3, background: 'red' } })
  .jpeg()
  .toBuffer();

describe('a sound folder', () => {
  it('is read without a problem', async () => {
    const content = await contentOf({
      'entries/haul/plover/entry.md': entryFile('Plover', 'photos: [{ file: a.jpg, alt: On the bench }]'),
      'entries/haul/plover/a.jpg': photo,
      'rulings/haul/plover.md': '---\nflights: []\n---\n',
      'builders/amarsh.md': '---\nname: A. Marsh\n---\n',
      'pages/privacy.md': '---\ntitle: Privacy\n---\n',
      'news/2027-05-09-first.md': '---\ntitle: First flights\ndate: 2027-05-09\n---\n',
      'rubber/fen-a.md':
        '---\nlabel: Fen A\nstretch-tests: [{ file: fen-a.csv, length: 100 mm, mass: 0.33 g }]\n---\n',
      'rubber/fen-a.csv': 'extension [mm],force [N]\n0,0\n500,3\n0,0\n',
    });
    expect(placesOf(content)).toEqual([]);
    expect(content.entries.map(({ value }) => value.name)).toEqual(['Plover']);
    expect(content.entries[0]?.photos).toMatchObject([
      { file: 'a.jpg', alt: 'On the bench', width: 9, height: 6 },
    ]);
    expect(content.entries[0]?.folder).toEqual(['a.jpg']);
    expect(content.batches[0]?.value.stretchTests[0]?.points?.[1]).toEqual({ ratio: 6, force: 3 });
    expect(content.leftOut).toEqual([]);
    expect(content.files.every(({ fate }) => fate === 'published')).toBe(true);
    expect(content.files).toHaveLength(10);
  });

  it('gives the same twice', async () => {
    const once = await contentOf({});
    expect(JSON.stringify(await contentOf({}))).toBe(JSON.stringify(once));
  });

  it('may not be there at all', async () => {
    const content = await readContent('/nowhere/at/all');
    expect(placesOf(content)).toEqual(['unreadable-folder .:1:1', 'site-file-missing site.md:1:1']);
  });
});

describe('a file of nothing but mistakes', () => {
  it('has 500 of them told, doubts or errors', async () => {
    const content = await contentOf({
      'entries/haul/plover/entry.md': entryFile('Plover', 'foo: x\n'.repeat(9000)),
      'entries/haul/teal/entry.md': entryFile(
        'Teal',
        `glides:\n${'  - { height: 30 m, distance: 900 m }\n'.repeat(400)}`,
      ),
    });
    const codes = content.problems.map(({ code, file }) => `${code} ${file}`);
    expect(codes).toHaveLength(1002);
    expect(codes).toContain('more-mistakes entries/haul/plover/entry.md');
    expect(codes).toContain('more-doubts entries/haul/teal/entry.md');
    expect(content.entries.map(({ value }) => value.id)).toEqual(['teal']);
  });
});

describe('every file is accounted for', () => {
  it('as published, left out or ignored, once', async () => {
    const files = {
      ...soundFolder,
      'README.md': 'x',
      '.gitignore': 'x',
      'notes.txt': 'x',
      'deep/er/still/x.md': 'x',
      'entries/haul/plover/spare.png': photo,
      'entries/haul/plover/entry.md~': 'x',
      'entries/haul/bad/entry.md': '---\nname: Bad\n---\n',
      'entries/haul/bad/a.jpg': photo,
      'entries/haul/none/a.jpg': photo,
      'rulings/haul/bad.md': '---\nflights: []\n---\n',
      'results/old.json': '{',
    };
    await inFolder(files, async (directory) => {
      const content = await readContent(directory);
      const there = readdirSync(directory, { recursive: true, withFileTypes: true })
        .filter((item) => item.isFile())
        .map((item) => join(item.parentPath, item.name).slice(directory.length + 1));
      expect(content.files.map(({ file }) => file)).toEqual(there.sort());
      const why = Object.fromEntries(
        content.files.map(({ file, fate, why: reason }) => [file, `${fate}: ${reason}`]),
      );
      expect(why).toMatchObject({
        'README.md': 'ignored: read-me',
        '.gitignore': 'ignored: hidden file',
        'notes.txt': 'ignored: unexpected-file',
        'entries/haul/plover/spare.png': 'ignored: unused-file',
        'entries/haul/plover/entry.md~': 'ignored: backup of an editor',
        'entries/haul/plover/entry.md': 'published: null',
        'entries/haul/bad/entry.md': 'left-out: missing-field',
        'rulings/haul/bad.md': 'left-out: its entry is left out',
        'results/old.json': 'left-out: not-json',
      });
      expect(content.leftOut).toEqual([
        { challenge: 'haul', entry: 'bad' },
        { challenge: 'haul', entry: 'none' },
      ]);
    });
  });

  it('links are not followed', async () => {
    await inFolder(soundFolder, async (directory) => {
      symlinkSync('/etc', join(directory, 'pages'));
      symlinkSync(join(directory, 'site.md'), join(directory, 'entries/haul/plover/bench.jpg'));
      const content = await readContent(directory);
      expect(placesOf(content)).toEqual([
        'link-not-followed entries/haul/plover/bench.jpg:1:1',
        'link-not-followed pages:1:1',
      ]);
    });
  });
});

describe('a mistake costs what it touches and no more', () => {
  it('a bad photo costs the photo', async () => {
    const content = await contentOf({
      'entries/haul/plover/entry.md': entryFile(
        'Plover',
        'photos:',
        '  - { file: a.jpg, alt: a }',
        '  - { file: b.jpg, alt: b }',
        '  - { file: ../a.jpg, alt: c }',
        '  - { file: A.JPG, alt: d }',
      ),
      'entries/haul/plover/a.jpg': photo,
      'entries/haul/plover/b.jpg': 'not a picture',
    });
    expect(content.entries[0]?.photos.map(({ file }) => file)).toEqual(['a.jpg']);
    expect(placesOf(content)).toEqual([
      'photo-format entries/haul/plover/entry.md:10:13',
      'photo-name entries/haul/plover/entry.md:11:13',
      'photo-missing entries/haul/plover/entry.md:12:13',
    ]);
    expect(content.problems[2]?.message).toBe(
      '"A.JPG" is named here, but there is no such file beside this one. There is "a.jpg": names must agree in upper and lower case.',
    );
    expect(content.files.find(({ file }) => file.endsWith('b.jpg'))?.fate).toBe('left-out');
  });

  it('a photo that is not there is looked for among those that are', async () => {
    const content = await contentOf({
      'entries/haul/plover/entry.md': entryFile(
        'Plover',
        'photos: [{ file: bnch.jpg, alt: a }, { file: "fl\u00fcgel.jpg", alt: b }, { file: wing.png, alt: c }]',
      ),
      'entries/haul/plover/bench.jpg': photo,
      'entries/haul/plover/flu\u0308gel.jpg': photo,
    });
    const missing = content.problems.filter(({ code }) => code === 'photo-missing');
    expect(missing.map(({ suggestion }) => suggestion)).toEqual(['bench.jpg', 'flu\u0308gel.jpg', null]);
    expect(missing[1]?.message).toContain('letters with accents in how they are put together');
  });

  it('the thirteenth photo and those after it are left out', async () => {
    const names = Array.from({ length: 14 }, (_, index) => `p${index}.jpg`);
    const content = await contentOf({
      'entries/haul/plover/entry.md': entryFile(
        'Plover',
        'photos:',
        ...names.map((name) => `  - { file: ${name}, alt: x }`),
      ),
      ...Object.fromEntries(names.map((name) => [`entries/haul/plover/${name}`, photo])),
    });
    expect(content.entries[0]?.photos).toHaveLength(12);
    expect(content.problems.map(({ message }) => message)).toEqual([
      '"p12.jpg" is the 13th photo; at most 12 are published, so this one and those after it are left out.',
    ]);
  });

  it('a bad log costs the log', async () => {
    const content = await contentOf({
      'entries/haul/plover/entry.md': entryFile('Plover').replace(
        'motors: [{ count: 2 }]',
        'motors: [{ count: 2, thrust-log: a.csv, torque-log: b.csv }]',
      ),
      'entries/haul/plover/a.csv': 'time [s],thrust [g]\n0,5\n1,x\n',
      'entries/haul/plover/b.csv': 'turns,torque [N·mm]\n9,5\n0,0\n',
    });
    expect([...(content.entries[0]?.logs.thrust.keys() ?? [])]).toEqual([]);
    expect(content.entries[0]?.logs.torque.get('b.csv')?.points).toHaveLength(2);
    expect(placesOf(content)).toEqual(['log-value entries/haul/plover/a.csv:3:1']);
  });

  it('a bad entry costs the entry', async () => {
    const content = await contentOf({
      'entries/haul/bad/entry.md': Buffer.from([0x2d, 0x2d, 0x2d, 0x0a, 0xff]),
      'entries/haul/worse/entry.md': 'no front matter',
    });
    expect(content.entries.map(({ value }) => value.id)).toEqual(['plover']);
    expect(placesOf(content)).toEqual([
      'not-utf-8 entries/haul/bad/entry.md:1:1',
      'no-front-matter entries/haul/worse/entry.md:1:1',
    ]);
    expect(content.problems[0]?.message).toBe('The file is not UTF-8 text: save it as UTF-8 in your editor.');
  });

  it('a bad frozen result costs its challenge, which must never be ranked anew', async () => {
    const content = await contentOf({ 'results/haul.json': '{' });
    expect(placesOf(content)).toEqual(['not-json results/haul.json:1:1']);
    expect(content.challenges).toEqual([]);
    expect(content.leftOut).toEqual([{ challenge: 'haul', entry: 'plover' }]);
    expect(content.files.find(({ file }) => file === 'challenges/haul.md')).toEqual({
      file: 'challenges/haul.md',
      fate: 'left-out',
      why: 'its frozen result is left out',
    });
  });

  it('a bad challenge costs its entries too, which are not blamed', async () => {
    const content = await contentOf({ 'challenges/haul.md': '---\ntitle: x\n---\n' });
    expect(content.problems.every(({ file }) => file === 'challenges/haul.md')).toBe(true);
    expect(content.leftOut).toEqual([{ challenge: 'haul', entry: 'plover' }]);
    expect(content.files.find(({ file }) => file.startsWith('entries/'))?.why).toBe(
      'its challenge is left out',
    );
  });
});

describe('names', () => {
  it('are part of addresses', async () => {
    const content = await contentOf({
      'entries/haul/Grau Käuz/entry.md': entryFile('x'),
      'pages/rubber.md': '---\ntitle: x\n---\n',
      'news/first.md': '---\ntitle: x\ndate: 2027-01-01\n---\n',
    });
    expect(content.problems.filter(({ code }) => /-name$/.test(code)).map(({ message }) => message)).toEqual([
      'The name "Grau Käuz" is part of an address: name it with a-z, 0-9 and hyphens only, at most 64 of them, such as "grau-kauz".',
      'The name "first" must begin with the date, then a hyphen and a word: 2027-05-09-first-flights.md, for example.',
      'The name "rubber" is one the site itself needs: choose another.',
    ]);
    expect(content.pages).toEqual([]);
    expect(content.leftOut).toEqual([{ challenge: 'haul', entry: 'Grau Käuz' }]);
  });

  // Not through the disk: many disks cannot hold both.
  it('that differ by case alone are told of each other', () => {
    const listing = { files: ['pages/A.md', 'pages/a.md', 'site.md'], links: [], ignored: [], problems: [] };
    // The one in lower case is right, and keeps its address.
    expect(checkListing(listing)).toMatchObject([
      {
        code: 'name-taken',
        file: 'pages/A.md',
        message:
          '"pages/A.md" and "pages/a.md" differ by case alone and would have the same address: rename one.',
        related: { file: 'pages/a.md' },
      },
    ]);
  });
});
