import { describe, expect, it } from 'vitest';
import { readAlmanac } from '../../src/almanac/read-almanac.ts';
import { type Files, inFolder, soundFolder } from '../entries/content-folder.ts';

// What is checked is content format 1 ("the same aircraft in another challenge: differing numbers are listed"). Places
// were counted by hand.

const older = 'entries/haul/plover/entry.md';
const newer = 'entries/next/plover/entry.md';

function entry(span: string, airframe: string, ...more: string[]): string {
  return [
    '---',
    'name: Plover',
    'builder: amarsh',
    'control: free',
    `wing: { span: ${span} }`,
    `mass: { airframe: ${airframe} }`,
    'motors: [{ count: 2, break-turns: 700 }]',
    ...more,
    '---',
    'Text.',
    '',
  ].join('\n');
}

async function foundIn(files: Files): Promise<string[]> {
  const all = {
    ...soundFolder,
    'challenges/next.md': '---\ntitle: Next Haul\nopens: 2028-03-01\ncloses: 2028-10-31\n---\n',
    ...files,
  };
  const { problems } = await inFolder(all, (content) =>
    readAlmanac({ content, now: '2028-06-01T12:00:00Z' }),
  );
  return problems.map(
    ({ severity, code, file, line, column, message, related }) =>
      `${file}:${line}:${column} ${severity} ${code}: ${message} (${related?.file}:${related?.line}:${related?.column})`,
  );
}

const also = 'also: haul/plover';

describe('an aircraft in two challenges', () => {
  it('whose measure differs is a note at the later one that leads to the earlier', async () => {
    expect(
      await foundIn({ [older]: entry('1.20 m', '100 g'), [newer]: entry('1.25 m', '100 g', also) }),
    ).toEqual([
      `${newer}:5:15 note also-differs: \`wing.span\` is "1.25 m", and was "1.20 m" for the same aircraft in haul/plover. If it was changed in between, all is well; else correct the one that is wrong. (${older}:5:15)`,
    ]);
  });

  it('is compared once where both name each other', async () => {
    const found = await foundIn({
      [older]: entry('1.20 m', '100 g', 'also: next/plover'),
      [newer]: entry('1.20 m', '101 g', also),
    });
    expect(found).toHaveLength(1);
    expect(found[0]).toContain(`${newer}:6:19 note also-differs`);
  });

  it('may write a measure in another unit', async () => {
    expect(
      await foundIn({ [older]: entry('1.20 m', '100 g'), [newer]: entry('120 cm', '0.1 kg', also) }),
    ).toEqual([]);
  });

  it('may begin as any setup of the earlier entry was', async () => {
    const setup = 'setups: [{ id: b, from: 2027-06-01, change: lighter, mass: { airframe: 96 g } }]';
    const first = entry('1.20 m', '100 g', setup);
    expect(await foundIn({ [older]: first, [newer]: entry('1.20 m', '96 g', also) })).toEqual([]);
    expect(await foundIn({ [older]: first, [newer]: entry('1.20 m', '100 g', also) })).toEqual([]);
    const [found] = await foundIn({ [older]: first, [newer]: entry('1.20 m', '90 g', also) });
    expect(found).toContain('is "90 g", and was "96 g"');
  });

  it('may break its motors at other turns: those are tests', async () => {
    const other = entry('1.20 m', '100 g', also).replace('700', '820');
    expect(await foundIn({ [older]: entry('1.20 m', '100 g'), [newer]: other })).toEqual([]);
  });

  it('may give what the other entry leaves open', async () => {
    const more = entry('1.20 m', '100 g', also, 'nose: 210 mm');
    expect(await foundIn({ [older]: entry('1.20 m', '100 g'), [newer]: more })).toEqual([]);
  });
});
