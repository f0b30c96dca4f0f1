import { describe, expect, it } from 'vitest';
import { contentOf, entryFile } from '../content-folder.ts';
import { allTold, entryOf, smallestEntry } from '../written.ts';

// What is asked about is content format 1 and the figures' contract; the wording is this project's own. The smallest
// entry fills lines 2 to 7.

const flight = (fields: string) =>
  allTold(entryOf(`${smallestEntry}\nflights:\n  - { number: 3, date: 2027-05-09, ${fields} }`));

describe('the watches of a flight', () => {
  it('are asked about where they read the same to the hundredth', () => {
    expect(flight('watches: [41.62 s, 41.62 s]')).toEqual([
      '9:45 watches-identical: `watches` in flight 3 are 41.62 s, 41.62 s: the same to the hundredth of a second, which two people seldom manage. Write `time` where there was one watch, and each watch as it was read where there were more.',
    ]);
    expect(flight('watches: [1:01.20, 61.20 s]')).toHaveLength(1);
  });

  it('may well read the same to the tenth', () => {
    expect(flight('watches: [41.6 s, 41.6 s]')).toEqual([]);
    expect(flight('watches: [41.62 s, 41.6 s]')).toEqual([]);
    expect(flight('watches: [41.62 s, 41.62 s, 41.63 s]')).toEqual([]);
  });

  it('are asked about where they read more than half a second apart', () => {
    expect(flight('watches: [41.6 s, 42.0 s, 42.2 s]')).toEqual([
      '9:45 watches-apart: `watches` in flight 3 are 41.6 s, 42.0 s, 42.2 s: 0.6 s apart, and two people are seldom more than 0.5 s apart. Look at the readings again.',
    ]);
    expect(flight('watches: [41.6 s, 42.1 s]')).toEqual([]);
  });
});

describe('a flight in a setup', () => {
  const flown = (date: string, setup: string) =>
    allTold(
      entryOf(
        `${smallestEntry}\nsetups: [{ id: b, from: 2027-06-10, nose: 20 cm }]\nflights: [{ number: 1, date: ${date}, time: 12 s${setup} }]`,
      ),
    );

  it('is not flown before it', () => {
    expect(flown('2027-06-09', ', setup: b')).toEqual([
      '9:61 flight-before-setup: `setup` in flight 1 is "b", which holds from 2027-06-10 on, but the flight is dated 2027-06-09. Correct the date, the day of the setup, or which setup was flown.\n(8:25 the setup holds from here)',
    ]);
  });

  it('is flown from its day on, or later in an earlier one', () => {
    expect(flown('2027-06-10', ', setup: b')).toEqual([]);
    expect(flown('2027-06-12', ', setup: none')).toEqual([]);
    expect(flown('2027-06-09', '')).toEqual([]);
  });
});

describe('a link to evidence', () => {
  const shown = (...flights: string[]) =>
    entryFile(
      'Teal',
      'flights:',
      ...flights.map((fields) => `  - { date: 2027-05-09, time: 12 s, ${fields} }`),
    );
  const toldOf = async (files: Record<string, string>) =>
    (await contentOf(files)).problems.map(
      ({ severity, code, file, line, column, message, related }) =>
        `${file}:${line}:${column} ${severity} ${code}: ${message} (${related?.file}:${related?.line})`,
    );
  const link = 'https://video.example/abc';

  it('is asked about where two flights show it', async () => {
    const teal = shown(
      `number: 1, evidence: [${link}]`,
      `number: 2, evidence: [https://video.example/x, ${link}]`,
    );
    expect(await toldOf({ 'entries/haul/teal/entry.md': teal })).toEqual([
      'entries/haul/teal/entry.md:10:84 note evidence-twice: Flight 2 shows the link "https://video.example/abc", and so does flight 1. Where one film shows both, say in `note` where each begins; else correct the link. (entries/haul/teal/entry.md:9)',
    ]);
  });

  it('is asked about where two entries of a challenge show it', async () => {
    const [told, ...more] = await toldOf({
      'entries/haul/teal/entry.md': shown(`number: 1, evidence: [${link}]`),
      'entries/haul/wigeon/entry.md': shown(`number: 4, evidence: ${link}`),
    });
    expect(more).toEqual([]);
    expect(told).toContain('entries/haul/wigeon/entry.md:9:');
    expect(told).toContain('and so does flight 1 in entries/haul/teal/entry.md.');
  });

  it('may stand in another challenge, where the same aircraft is entered', async () => {
    const challenge = '---\ntitle: Hall\nopens: 2027-03-01\ncloses: 2027-10-31\n---\n';
    expect(
      await toldOf({
        'challenges/hall.md': challenge,
        'entries/hall/teal/entry.md': shown(`number: 1, evidence: [${link}]`),
        'entries/haul/teal/entry.md': shown(`number: 1, evidence: [${link}]`),
      }),
    ).toEqual([]);
  });
});
