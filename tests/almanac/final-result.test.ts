import { describe, expect, it } from 'vitest';
import type { Almanac } from '../../src/almanac/almanac.ts';
import { careerOf } from '../../src/almanac/career.ts';
import { goneEntries } from '../../src/almanac/gone-entries.ts';
import { readAlmanac } from '../../src/almanac/read-almanac.ts';
import { promisedPages } from '../../src/publish/addresses.ts';
import { challengeCsv } from '../../src/publish/csv.ts';
import { challengeData } from '../../src/publish/data-file.ts';
import { entryFile, type Files, inFolder, soundFolder } from '../entries/content-folder.ts';

// An invented final result, written by hand as content format 1 has it: Plover first with 41 s, Teal second with 30 s.

const standing = (place: number, entry: string, score: number) => ({
  place,
  entry,
  divisions: [],
  score,
  provisional: false,
  flights: [1],
  'tie-break': null,
  'within-timing-error-of': [],
});
const entry = (id: string, name: string, builder: string, official: number) => ({
  id,
  name,
  builders: [builder],
  flights: [{ number: 1, date: '2027-05-09', official, status: 'accepted', reason: null }],
  facts: {},
});
const result = JSON.stringify({
  format: 1,
  generator: '1.0.0',
  closed: '2027-11-20',
  challenge: {
    id: 'haul',
    title: 'Long Haul',
    opens: '2027-03-01',
    closes: '2027-10-31',
    state: 'final',
    target: null,
  },
  standings: [standing(1, 'plover', 41), standing(2, 'teal', 30)],
  divisions: {},
  claims: [],
  unplaced: [],
  records: [],
  entries: [entry('plover', 'Plover', 'amarsh', 41), entry('teal', 'Teal', 'wren', 30)],
});
const flown = (seconds: number) => `flights: [{ number: 1, date: 2027-05-09, time: ${seconds} s }]`;

function almanacOf(files: Files): Promise<Almanac> {
  return inFolder(
    {
      ...soundFolder,
      'entries/haul/plover/entry.md': entryFile('Plover', flown(41)),
      'results/haul.json': result,
      ...files,
    },
    (content) => readAlmanac({ content, now: '2028-01-01' }),
  );
}

describe('an entry whose folder was deleted after the result became final', () => {
  it('keeps its page, its place and how that is explained', async () => {
    const almanac = await almanacOf({});
    expect(goneEntries(almanac).map(({ entry: { id } }) => id)).toEqual(['teal']);
    expect(promisedPages(almanac).map(({ address }) => address)).toContain('/entries/haul/teal/');
    const [haul] = almanac.challenges;
    expect(haul?.result.standings.map(({ place, entry: id }) => [place, id])).toEqual([
      [1, 'plover'],
      [2, 'teal'],
    ]);
    expect(haul?.places.overall.get('teal')).toMatch(/flight 1.*30/i);
  });

  it('keeps its flights in the data and in the table', async () => {
    const { challenges } = await almanacOf({});
    const data = JSON.parse(challengeData(challenges[0]!));
    expect(data.entries[1]).toMatchObject({
      id: 'teal',
      name: 'Teal',
      builders: ['wren'],
      flights: [{ number: 1, date: '2027-05-09', official: 30, status: 'accepted' }],
    });
    expect(challengeCsv(challenges[0]!)).toContain(
      '\r\nhaul,teal,Teal,wren,2,1,2027-05-09,30,,accepted,,30,yes,\r\n',
    );
  });

  it('stays with its builder, who goes by the handle', async () => {
    const almanac = await almanacOf({});
    const wren = almanac.builders.find(({ builder }) => builder.handle === 'wren');
    expect(wren?.builder.name).toBeNull();
    expect(careerOf(almanac, wren!).entries).toMatchObject([{ entry: 'teal', name: 'Teal', accepted: 1 }]);
  });

  it('is not gone where its file is there and cannot be read', async () => {
    const almanac = await almanacOf({ 'entries/haul/teal/entry.md': '---\nname: [\n---\n' });
    expect(almanac.leftOut).toEqual([{ challenge: 'haul', entry: 'teal' }]);
    expect(goneEntries(almanac)).toEqual([]);
  });
});

describe('an entry renamed after the result became final', () => {
  it('keeps its place under the name of today, and the old address leads there', async () => {
    const almanac = await almanacOf({
      'entries/haul/dabbler/entry.md': entryFile('Dabbler', flown(30), 'formerly: [teal]'),
    });
    const [haul] = almanac.challenges;
    expect(haul?.result.standings[1]).toMatchObject({ place: 2, entry: 'dabbler', score: 30 });
    expect(haul?.entries.find((one) => one.entry.id === 'dabbler')?.judged.flights).toMatchObject([
      { number: 1, status: 'accepted', official: { seconds: 30 } },
    ]);
    expect(goneEntries(almanac)).toEqual([]);
    expect(almanac.redirects.get('/entries/haul/teal/')).toBe('/entries/haul/dabbler/');
  });
});

describe('a final result that would come out differently today', () => {
  it('is told once, in whole, and stands', async () => {
    // Plover's file tells 39 s now, and nobody accepted anything; Teal's is gone.
    const almanac = await almanacOf({
      'entries/haul/plover/entry.md': entryFile('Plover', flown(39)),
    });
    expect(
      almanac.problems.map(({ file, severity, code, message }) => ({ file, severity, code, message })),
    ).toEqual([
      {
        file: 'results/haul.json',
        severity: 'note',
        code: 'final-result-differs',
        message:
          'The result of haul was frozen on 2027-11-20 and stands. Worked out from what is written today it would differ: ' +
          'plover 1 with 41 s, now without a place; teal 2 with 30 s, now without a place; ' +
          'flight 1 of plover 41 s and accepted, now 39 s and provisional; teal with one flight, now not read.',
      },
    ]);
    expect(almanac.challenges[0]?.result.standings[0]).toMatchObject({ entry: 'plover', score: 41 });
  });
});
