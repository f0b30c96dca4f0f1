import { describe, expect, it } from 'vitest';
import { readAlmanac } from '../../src/almanac/read-almanac.ts';
import { entryFile, type Files, inFolder, soundFolder } from '../entries/content-folder.ts';

// Who is given which file is the project's own decision; the letters of a file are what was written here.

const plover = 'entries/haul/plover/entry.md';

/** The file that is given out of an entry, of a folder of these files laid over the sound ones. */
async function given(files: Files, entry = 'plover', now = '2027-07-01T00:00:00Z') {
  const almanac = await inFolder({ ...soundFolder, ...files }, (content) => readAlmanac({ content, now }));
  const records = almanac.challenges.flatMap(({ entries }) => entries);
  const found = records.find((record) => record.entry.id === entry);
  if (found === undefined) throw new Error(`no entry ${entry}`);
  return found.fileToChange;
}

/** An entry whose builder says more of themselves than a handle. */
const builtBy = (builder: string) => entryFile('Plover').replace('builder: amarsh', `builder: ${builder}`);

describe('the file of an entry', () => {
  it('is given out letter for letter: remarks, order, line ends and byte order mark', async () => {
    const written = `\uFEFF${entryFile('Plover # not a remark', '# measured twice', 'entered:  2027-04-01')}`;
    const windows = written.replaceAll('\n', '\r\n');
    expect(await given({ [plover]: windows })).toBe(windows);
  });

  it('is given out before the opening and after the close, until the result is final', async () => {
    expect(await given({}, 'plover', '2027-01-01T00:00:00Z')).toBe(entryFile('Plover'));
    expect(await given({}, 'plover', '2027-12-01T00:00:00Z')).toBe(entryFile('Plover'));
  });

  it('is kept back where the aircraft was withdrawn', async () => {
    const withdrawn = entryFile('Plover', 'withdrawn: { date: 2027-05-01, reason: sold }');
    expect(await given({ [plover]: withdrawn })).toBe(null);
  });

  it('is kept back where the aircraft was taken out of the standings, and given out once that was lifted', async () => {
    const ruling = (more: string) => ({
      'rulings/haul/plover.md': `---\n${more}\n---\n`,
    });
    const out = 'disqualified: { by: otter, date: 2027-06-01, reason: A receiver was on board. }';
    expect(await given(ruling(out))).toBe(null);
    expect(await given(ruling('flights: []'))).toBe(entryFile('Plover'));
  });

  it.for([
    ['alone', '{ handle: wren, name: Secret Name, junior: true }'],
    ['in a team', '[amarsh, { handle: wren, name: Secret Name, junior: true }]'],
  ])('is kept back of a junior, $0', async ([, builder]) => {
    expect(await given({ [plover]: builtBy(builder!) })).toBe(null);
  });

  it('is kept back where only the builder’s own file says that they are a junior', async () => {
    const files = {
      [plover]: builtBy('{ handle: wren, name: Secret Name }'),
      'builders/wren.md': '---\njunior: true\n---\n',
    };
    expect(await given(files)).toBe(null);
  });

  it('is kept back where only another entry says so, or only the builder’s own file does not', async () => {
    const named = builtBy('{ handle: wren, name: Secret Name }');
    const junior = builtBy('{ handle: wren, junior: true }');
    expect(await given({ [plover]: named, 'entries/haul/snipe/entry.md': junior })).toBe(null);
    const grown = '---\nname: A. Wren\n---\n';
    expect(await given({ [plover]: junior, 'builders/wren.md': grown })).toBe(null);
  });
});
