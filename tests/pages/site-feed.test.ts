import { describe, expect, it } from 'vitest';
import type { Almanac } from '../../src/almanac/almanac.ts';
import { happeningsOf, latelyIn } from '../../src/almanac/happenings.ts';
import { readAlmanac } from '../../src/almanac/read-almanac.ts';
import { happeningTold } from '../../src/components/happening-told.ts';
import { siteFeed } from '../../src/components/site-feed.ts';
import { noHistory } from '../contest/history/no-history.ts';
import { entryFile, type Files, inFolder, soundFolder } from '../entries/content-folder.ts';
import { challengeRecord } from '../publish/sample-almanac.ts';

// Invented content; every date and time is read off the files below.

const plover = 'entries/haul/plover/entry.md';
const flights = [
  'entered: 2027-03-20',
  'flights:',
  '  - { number: 1, date: 2027-05-01, time: 20 s }',
  '  - { number: 2, date: 2027-05-02, time: 41 s }',
];
function almanacOf(files: Files): Promise<Almanac> {
  return inFolder({ ...soundFolder, ...files }, (content) =>
    readAlmanac({ content, now: '2027-06-01T12:00:00Z' }),
  );
}

const post = (title: string, ...more: string[]) =>
  `---\ntitle: ${title}\ndate: 2027-04-01\n${more.map((line) => `${line}\n`).join('')}---\nA *text*.\n`;

describe('what happened', () => {
  it('is an aircraft on the day it was entered, else of its first flight', async () => {
    const entered = await almanacOf({ [plover]: entryFile('Plover', ...flights) });
    expect(happeningsOf(entered).map(({ id, date }) => [id, date])).toEqual([
      ['entered/haul/plover', '2027-03-20'],
    ]);
    const flown = await almanacOf({ [plover]: entryFile('Plover', ...flights.slice(1)) });
    expect(happeningsOf(flown).map(({ date }) => date)).toEqual(['2027-05-01']);
  });

  it('leaves out a withdrawn aircraft', async () => {
    const gone = await almanacOf({
      [plover]: entryFile('Plover', ...flights, 'withdrawn: { date: 2027-05-05, reason: sold }'),
    });
    expect(happeningsOf(gone)).toEqual([]);
  });

  it('keeps its name when titles and names change', async () => {
    const before = await almanacOf({ 'news/2027-04-01-start.md': post('Start') });
    const after = await almanacOf({
      'news/2027-04-01-begin.md': post('We begin', 'formerly: [2027-04-01-start]'),
    });
    expect(happeningsOf(before).map(({ id }) => id)).toEqual(['news/2027-04-01-start']);
    expect(happeningsOf(after).map(({ id }) => id)).toEqual(['news/2027-04-01-start']);
  });
});

describe('what happened lately', () => {
  const flight = (number: number, seconds: number, date: string) => ({
    entry: 'reedling',
    number,
    builders: ['amarsh'],
    flown: { date, time: null, offset: null, written: date },
    seconds,
    span: null,
    reachedTarget: seconds >= 40,
  });
  const first = flight(1, 30, '2027-05-01');
  const second = flight(2, 45, '2027-05-02');
  const record = {
    ...challengeRecord,
    history: {
      ...noHistory,
      flights: [first, second],
      time: [
        { flight: first, value: 30, gain: null },
        { flight: second, value: 45, gain: 15 },
      ],
      honour: [{ entry: 'reedling', first: second, best: second, times: 1 }],
    },
  };

  it('tells each flight once, by the most it did, the newest first', () => {
    // The entry itself has a flight of 9 May and no day on which it was entered.
    expect(latelyIn(record, 5).map(({ id }) => id)).toEqual([
      'entered/long-haul/reedling',
      'target-reached/long-haul/reedling/2',
      'accepted/long-haul/reedling/2027-05-01',
    ]);
    expect(latelyIn(record, 1)).toHaveLength(1);
  });
});

describe('a day of many flights', () => {
  const day = '2027-05-02';
  const flown = (entry: string, number: number, seconds: number, date = day) => ({
    entry,
    number,
    builders: ['amarsh'],
    flown: { date, time: null, offset: null, written: date },
    seconds,
    span: null,
    reachedTarget: false,
  });
  const record = {
    ...challengeRecord,
    challenge: {
      ...challengeRecord.challenge,
      amendments: [
        { date: '2027-04-20', what: 'Video counts.', why: 'Far from help.' },
        { date: '2027-04-20', what: 'Two watches.', why: 'Fairness.' },
      ],
    },
    history: {
      ...noHistory,
      // Without rulings a flight is dated by the day it was flown.
      flights: [
        flown('teal', 1, 20, '2027-05-01'),
        ...Array.from({ length: 40 }, (_, index) => flown('teal', index + 2, 30 + index)),
        flown('wigeon', 1, 12),
      ],
    },
  };

  it('is one line for each aircraft and day', () => {
    const told = latelyIn(record, 100).flatMap((one) =>
      one.kind === 'accepted' ? [[one.id, one.flights.length]] : [],
    );
    expect(told).toEqual([
      ['accepted/long-haul/wigeon/2027-05-02', 1],
      ['accepted/long-haul/teal/2027-05-02', 40],
      ['accepted/long-haul/teal/2027-05-01', 1],
    ]);
  });

  it('says how many, and the longest, of 30 to 69 seconds', () => {
    const almanac = { challenges: [record], builders: [] } as unknown as Almanac;
    const [, second] = latelyIn(record, 100).filter(({ kind }) => kind === 'accepted');
    expect(happeningTold(almanac, second!).title).toBe('teal: 40 flights accepted, the longest 69.0\u00a0s');
  });

  it('leaves room for the amendments of the rules, which lead to where they stand', () => {
    const told = latelyIn(record, 100).filter(({ kind }) => kind === 'amended');
    expect(told.map(({ id, date }) => [id, date])).toEqual([
      ['amended/long-haul/2027-04-20', '2027-04-20'],
      ['amended/long-haul/2027-04-20/2', '2027-04-20'],
    ]);
    const almanac = { challenges: [record], builders: [] } as unknown as Almanac;
    expect(happeningTold(almanac, told[0]!)).toEqual({
      title: `${record.challenge.title}, rules amended: Video counts.`,
      path: '/challenges/long-haul/rules/#amendments',
      people: [],
    });
  });
});

describe('the feed of a site', () => {
  it('holds the sixty newest of a hundred news', async () => {
    const files = Object.fromEntries(
      Array.from({ length: 100 }, (_, index) => {
        const day = new Date(Date.UTC(2027, 0, 1 + index)).toISOString().slice(0, 10);
        return [`news/${day}-number-${index}.md`, `---\ntitle: Number ${index}\ndate: ${day}\n---\nText.\n`];
      }),
    );
    const feed = siteFeed(await almanacOf(files), 'https://club.example');
    const titles = [...feed.matchAll(/<entry>\s*<id>[^<]*<\/id>\s*<title>([^<]*)/g)].map((match) => match[1]);
    expect(titles).toHaveLength(60);
    expect(titles[0]).toBe('Number 99');
    expect(titles.at(-1)).toBe('Number 40');
  });

  it('names a junior by handle only', async () => {
    const junior = entryFile('Plover', ...flights).replace(
      'builder: amarsh',
      'builder: { handle: wren, name: Winifred Real, junior: true }',
    );
    const feed = siteFeed(await almanacOf({ [plover]: junior }), 'https://club.example');
    expect(feed).toContain('<name>wren</name>');
    expect(feed).not.toContain('Winifred');
  });

  it('is a feed of nothing where nothing has happened', async () => {
    const feed = siteFeed(await almanacOf({}), null);
    expect(feed).not.toContain('<entry>');
    expect(feed).toContain('<id>https://site.invalid/feed.xml</id>');
  });
});
