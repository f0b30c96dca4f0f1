import { readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { readContent } from '../../src/entries/folder/read-folder.ts';
import { canonicalFlight } from '../../src/entries/seal.ts';
import { sealOf } from '../../src/entries/seal-of.ts';
import { readSource } from '../../src/entries/source/read-source.ts';
import { splitPlain } from '../../src/entries/source/split-plain.ts';
import { understandEntry } from '../../src/entries/understand/entry.ts';

// `tests/cases/format-1` holds the examples of content format 1 as its description prints them, completed only where it
// writes "…" or names something that must exist. Files of format 1 must be readable for ever: nothing here may change.
const folder = resolve(import.meta.dirname, '../cases/format-1');

describe('the examples of format 1', async () => {
  const content = await readContent(folder);

  it('have no mistake, and no doubt but of what an acceptance did not say it saw, and of the name of a junior', () => {
    expect(content.problems.map(({ severity, code, file }) => `${severity} ${code} ${file}`)).toEqual([
      'warning junior-named builders/bwren.md',
      'note evidence-not-seen rulings/long-haul-2027/reedling.md',
      'note evidence-not-seen rulings/long-haul-2027/reedling.md',
    ]);
  });

  it('are published, every file of them', () => {
    expect(content.files.filter(({ fate }) => fate !== 'published')).toEqual([]);
    expect(content.files.length).toBe(23);
    expect(content.entries.map(({ value }) => `${value.challenge}/${value.id}`)).toEqual([
      'fenside-2026/reedling',
      'long-haul-2027/bittern',
      'long-haul-2027/curlew',
      'long-haul-2027/reedling',
    ]);
  });

  it('mean what they say', () => {
    const reedling = content.entries[3]?.value;
    expect(reedling?.setups[0].design.wing.span).toMatchObject({ value: 3.2, u: 0.005 });
    expect(reedling?.setups.map(({ id, design }) => [id, design.mass.airframe?.value])).toEqual([
      [null, 0.612],
      ['b', 0.6],
    ]);
    expect(reedling?.flights.map(({ number, withdrawn }) => [number, withdrawn])).toEqual([
      [1, false],
      [2, true],
      [4, false],
    ]);
    expect(content.results[0]?.value.standings[0]).toMatchObject({ entry: 'reedling', tieBreak: null });
  });

  it('carry the seals of their flights', () => {
    const { source } = content.entries[3] ?? {};
    const ruling = content.rulings.find(({ value }) => value.entry === 'reedling')?.value;
    if (source === undefined) throw new Error('reedling was not read');
    const seals = [0, 2].map((index) => sealOf(canonicalFlight(source, index) ?? ''));
    expect(ruling?.flights.map(({ seal }) => seal)).toEqual(seals);
  });

  it('read the same with a byte order mark and with CRLF', () => {
    const file = join(folder, 'entries/long-haul-2027/reedling/entry.md');
    const text = readFileSync(file, 'utf8');
    const read = (written: string) => {
      const { source } = readSource('entry.md', written, splitPlain);
      if (source === null) throw new Error('not read');
      return understandEntry({ ...source, body: '' }, { challenge: 'c', id: 'e' });
    };
    expect(read(`\ufeff${text.replaceAll('\n', '\r\n')}`)).toEqual(read(text));
  });
});
