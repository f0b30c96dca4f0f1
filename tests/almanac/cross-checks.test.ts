import sharp from 'sharp';
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

describe('a skein', () => {
  // By hand: 10 strands of 3 mm × 1 mm × 400 mm are 12 cm³, at 0.93 g/cm³ 11.16 g.
  const measures = 'strip: { width: 3 mm, thickness: 1 mm }, strands: 10, length: 400 mm';
  const weighing = (mass: string, ...more: string[]) =>
    foundIn({
      [plover]: entryFile('Plover', ...more).replace(
        'motors: [{ count: 2 }]',
        `motors: [{ count: 2, skein: { ${measures}, mass: ${mass} } }]`,
      ),
    });

  it('that weighs another thing than its strip is a warning, with both numbers', async () => {
    expect(told(await weighing('22 g'))).toEqual([
      `${plover}:7:107 warning skein-mass-differs: \`skein.mass\` in motor 1 is "22 g", but strip, strands and length give 11.2 g: measuring explains 0.8 to 1.25 times that, but not 1.97. Weigh it again, or correct the strip, the strands or the length.`,
    ]);
    expect(told(await weighing('8.8 g'))).toHaveLength(1);
  });

  it('may be a fifth lighter or a quarter heavier', async () => {
    expect(await weighing('9 g')).toEqual([]);
    expect(await weighing('13.9 g')).toEqual([]);
  });

  it('is asked about once, and in a setup that has motors of its own', async () => {
    const kept = 'setups: [{ id: b, from: 2027-05-10, nose: 20 cm }]';
    expect(await weighing('22 g', kept)).toHaveLength(1);
    const own = `setups: [{ id: b, from: 2027-05-10, motors: [{ count: 1, skein: { ${measures}, mass: 5 g } }] }]`;
    const [problem, ...more] = await weighing('11 g', own);
    expect(more).toEqual([]);
    expect(problem?.message).toContain('`skein.mass` in motor 1 in setup b is "5 g"');
    expect(problem).toMatchObject({ line: 8, found: '5 g' });
  });
});

describe('the turns of a flight', () => {
  const flown = (turns: string, motors = '[{ count: 2, break-turns: 1000 ± 20 }]') =>
    foundIn({
      [plover]: entryFile(
        'Plover',
        `flights: [{ number: 1, date: 2027-05-01, time: 20 s, turns: ${turns} }]`,
      ).replace('[{ count: 2 }]', motors),
    });

  it('are a warning above the break turns, by more than both uncertainties explain', async () => {
    // u of the share by hand: 2 % of 1.05 for the break turns; the turns add next to nothing.
    expect(told(await flown('1050'))).toEqual([
      `${plover}:8:61 warning turns-above-break: \`turns\` in flight 1 is "1050", 1.05 of the 1000 ± 20 turns at which the motor should break. Correct the turns, or test \`break-turns\` again.`,
    ]);
  });

  it('are a word of caution near the break turns', async () => {
    expect(told(await flown('96 x 10'))).toEqual([
      `${plover}:8:61 note turns-near-break: \`turns\` in flight 1 is "96 x 10", 0.96 of the 1000 ± 20 turns at which the motor should break: the next skein may well break. Wear eye protection, and keep people out of line with it.`,
    ]);
    expect((await flown('1030')).map(({ code }) => code)).toEqual(['turns-near-break']);
    expect(await flown('950')).toEqual([]);
  });

  it('are those of the motor wound furthest', async () => {
    const motors = '[{ count: 1, break-turns: 1000 ± 20 }, { count: 1, break-turns: 700 ± 14 }]';
    const [message, ...more] = told(await flown('[960, 690]', motors));
    expect(more).toEqual([]);
    expect(message).toContain('is "690", 0.986 of the 700 ± 14 turns at which motor 2 should break');
  });

  it('say nothing of a flight that its builder took back', async () => {
    expect(await flown('1050, withdrawn: true')).toEqual([]);
  });
});

describe('a picture', () => {
  it('shown twice, under whatever name, is a note at the second', async () => {
    const picture = await sharp({
      create: { width: 40, height: 30, channels: 3, background: '#246' },
    })
      .png()
      .toBuffer();
    const found = await foundIn({
      [plover]: entryFile(
        'Plover',
        'photos:',
        '  - { file: a.png, alt: From above }',
        '  - { file: b.png, alt: From the side }',
      ),
      'entries/haul/plover/a.png': picture,
      'entries/haul/plover/b.png': picture,
    });
    expect(told(found)).toEqual([
      `${plover}:10:13 note photo-twice: "b.png" is the same picture as photo 1. Take one of them out.`,
    ]);
    expect(found[0]?.related).toMatchObject({ file: plover, line: 9, column: 13 });
  });
});
