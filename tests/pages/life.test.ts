import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readAlmanac } from '../../src/almanac/read-almanac.ts';
import { sealFlights } from '../../src/almanac/seal-flights.ts';
import { readContent } from '../../src/entries/folder/read-folder.ts';
import { entryFile, inFolder, soundFolder } from '../entries/content-folder.ts';
import { type BuiltPages, base, buildPages } from './build-site.ts';

// An invented folder in which everything once had another name. Two flights lie an hour apart on both sides of the date
// line: 08:00 on 10 May at UTC+13 is 19:00 UTC on 9 May, and 09:00 on 9 May at UTC−11 is 20:00 UTC on 9 May.

const files = {
  ...soundFolder,
  'challenges/haul.md':
    '---\ntitle: Long Haul\nopens: 2027-03-01\ncloses: 2027-10-31\nformerly: [hop]\n---\n',
  'builders/amarsh.md': '---\nname: A. Marsh\nformerly: [arthur]\n---\n',
  'pages/measuring.md': '---\ntitle: Measuring\nformerly: [how-to]\n---\nText.\n',
  'rubber/fen-a.md': '---\nlabel: Fen A\nformerly: [marsh-a]\n---\n',
  'news/2027-04-01-begin.md':
    '---\ntitle: We begin\ndate: 2027-04-01\nformerly: [2027-04-01-start]\n---\nText.\n',
  'entries/haul/plover/entry.md': entryFile(
    'Plover',
    'flights: [{ number: 1, date: 2027-05-10 08:00+13:00, time: 31 s }]',
    'formerly: [piper]',
  ),
  'entries/haul/teal/entry.md': entryFile(
    'Teal',
    'flights: [{ number: 1, date: 2027-05-09 09:00-11:00, time: 20 s }]',
  ),
  'entries/haul/swift/entry.md': entryFile(
    'Swift',
    'flights: [{ number: 1, date: 2027-05-02, time: 55 s }]',
    'withdrawn: { date: 2027-08-01, reason: Sold to a museum }',
  ),
};

let site: BuiltPages;

beforeAll(async () => {
  const almanac = await inFolder(files, async (folder) => {
    const { entries } = await readContent(folder);
    mkdirSync(join(folder, 'rulings/haul'), { recursive: true });
    for (const entry of entries)
      writeFileSync(
        join(folder, `rulings/haul/${entry.value.id}.md`),
        `---\nflights: [{ flight: 1, verdict: accepted, by: otter, date: 2027-05-12, seal: ${sealFlights(entry).get(1)} }]\n---\n`,
      );
    return readAlmanac({ content: folder, now: '2027-09-01' });
  });
  expect(almanac.problems).toEqual([]);
  site = await buildPages(almanac);
});

afterAll(() => site.remove());

describe('an old address', () => {
  it.each([
    ['entries/haul/piper/', 'entries/haul/plover/'],
    ['entries/hop/plover/', 'entries/haul/plover/'],
    ['entries/hop/piper/', 'entries/haul/plover/'],
    ['challenges/hop/', 'challenges/haul/'],
    ['challenges/hop/rules/', 'challenges/haul/rules/'],
    ['challenges/hop/records/', 'challenges/haul/records/'],
    ['challenges/hop/plot/', 'challenges/haul/plot/'],
    ['challenges/hop/awaiting/', 'challenges/haul/awaiting/'],
    ['builders/arthur/', 'builders/amarsh/'],
    ['how-to/', 'measuring/'],
    ['rubber/marsh-a/', 'rubber/fen-a/'],
    ['news/2027-04-01-start/', 'news/2027-04-01-begin/'],
  ])('%s leads on to %s, by itself and by a link', async (old, now) => {
    const moved = await site.page(old);
    expect(moved).toMatch(new RegExp(`http-equiv="refresh" content="0; ?url=[^"]*${base}${now}"`));
    expect(moved).toContain(`<a href="${base}${now}">`);
    expect(await site.page(now)).toContain('<h1');
  });

  it.each(['json', 'csv'])('of data holds the same, as %s', async (kind) => {
    expect(await site.page(`data/hop.${kind}`)).toBe(await site.page(`data/haul.${kind}`));
  });
});

describe('a withdrawn aircraft', () => {
  it('keeps its page, which says when and why', async () => {
    const page = await site.page('entries/haul/swift/');
    expect(page).toContain('This aircraft has been withdrawn from the challenge.');
    expect(page).toContain('1 August 2027');
    expect(page).toContain('Sold to a museum');
    expect(page).toContain('55.0');
  });

  it('has no place and no record', async () => {
    const table = await site.page('data/haul.csv');
    expect(table).toMatch(/\r\nhaul,swift,Swift,amarsh,,1,2027-05-02,/);
    expect(await site.page('challenges/haul/records/')).not.toContain('55.0');
  });
});

describe('flights on both sides of the date line', () => {
  it('keep the day of their own place in the data and on their pages', async () => {
    const table = await site.page('data/haul.csv');
    expect(table).toContain('\r\nhaul,plover,Plover,amarsh,1,1,2027-05-10,31,');
    expect(table).toContain('\r\nhaul,teal,Teal,amarsh,2,1,2027-05-09,20,');
    expect(await site.page('entries/haul/plover/')).toContain(
      '<time datetime="2027-05-10">10 May 2027</time>',
    );
    expect(await site.page('entries/haul/teal/')).toContain('<time datetime="2027-05-09">9 May 2027</time>');
  });

  it('stand in the records by the calendar of their own places, each with its own day', async () => {
    const records = await site.page('challenges/haul/records/');
    const days = [...records.matchAll(/<time datetime="(2027-05-\d\d)">(\d+ May) 2027/g)].map(
      ([, iso, told]) => `${iso} ${told}`,
    );
    expect(days.slice(0, 2)).toEqual(['2027-05-09 9 May', '2027-05-10 10 May']);
  });
});
