import { describe, expect, it } from 'vitest';
import { readAlmanac } from '../../src/almanac/read-almanac.ts';
import type { Problem } from '../../src/entries/problems/problem.ts';
import { entryFile, type Files, inFolder, soundFolder } from '../entries/content-folder.ts';

const plover = 'entries/haul/plover/entry.md';

/** What is found in the sound folder with these files laid over it, on 1 June 2027. */
async function foundIn(files: Files): Promise<readonly Problem[]> {
  const almanac = await inFolder({ ...soundFolder, ...files }, (content) =>
    readAlmanac({ content, now: '2027-06-01T12:00:00Z' }),
  );
  return almanac.problems;
}

function told(problems: readonly Problem[]): string[] {
  return problems.map(
    ({ severity, code, file, line, column, message }) =>
      `${file}:${line}:${column} ${severity} ${code}: ${message}`,
  );
}

describe('a flight that the rules leave out', () => {
  it('is a note at the flight, with the reason of the page', async () => {
    const found = await foundIn({
      [plover]: entryFile(
        'Plover',
        'flights:',
        '  - { number: 1, date: 2027-05-01, time: 20 s }',
        '  - { number: 2, date: 2027-02-27, time: 30 s }',
      ),
    });
    expect(told(found)).toEqual([
      `${plover}:10:15 note flight-does-not-count: Flight 2 does not count under the rules of the challenge: flown on 2027-02-27, before the challenge opened on 2027-03-01.`,
    ]);
  });
});

describe('a flight of a day to come', () => {
  const on = (date: string) =>
    foundIn({ [plover]: entryFile('Plover', 'flights:', `  - { number: 1, date: ${date}, time: 20 s }`) });

  it('is a warning at its date', async () => {
    expect(told(await on('2027-06-03'))).toEqual([
      `${plover}:9:24 warning flight-in-future: Flight 1 is dated 2027-06-03, and today is 2027-06-01. Write the day on which it was flown.`,
    ]);
  });

  it('has a day of grace, since the day comes earlier further east', async () => {
    expect(await on('2027-06-02')).toEqual([]);
  });
});

describe('an acceptance without effect', () => {
  const flight = ['flights:', '  - { number: 1, date: 2027-05-01, time: 20 s }'];
  const ruled = (more: string) => ({
    [plover]: entryFile('Plover', ...flight),
    'rulings/haul/plover.md': `---\nflights:\n  - { flight: 1, verdict: accepted, by: otter, date: 2027-05-02${more} }\n---\n`,
  });

  it('because it carries no seal is a warning at the ruling, with the flight beside it', async () => {
    const found = await foundIn(ruled(''));
    expect(told(found)).toEqual([
      'rulings/haul/plover.md:3:15 warning acceptance-lapsed: The acceptance of flight 1 of "Plover" has no effect now: it carries no seal. Look at the flight again and rule anew.',
    ]);
    expect(found[0]?.related).toMatchObject({ file: plover, line: 9, column: 15 });
  });

  it('because the flight was edited says so', async () => {
    const [message] = told(await foundIn(ruled(', seal: 1-0123456789abcdef')));
    expect(message).toContain('what the builder wrote of the flight has changed since');
  });
});
