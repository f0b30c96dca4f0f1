import { describe, expect, it } from 'vitest';
import { reviewMarkdown } from '../../../scripts/terminal/review-markdown.ts';
import type { Concern } from '../../../src/almanac/review/concern.ts';
import { entryFile, type Files } from '../../entries/content-folder.ts';
import { reviewBetween } from './sides.ts';

// Invented files; what must be found is worked out by eye from the difference beside each check.

const plover = 'entries/haul/plover/entry.md';
const kindsOf = (concerns: readonly Concern[]) => concerns.map(({ kind }) => kind);

function flown(...flights: string[]): string {
  return entryFile('Plover', 'flights:', ...flights.map((one) => `  - { ${one} }`));
}

describe('values that changed', () => {
  it('are those of the fields alone, each with both texts', async () => {
    const { entries } = await reviewBetween(
      {},
      { [plover]: entryFile('Plover', 'origin: own').replace('1.2 m', '1.25 m') },
    );
    expect(entries[0]?.values.map(({ field, before, after }) => [field, before, after])).toEqual([
      ['`wing.span`', '1.2 m', '1.25 m'],
      ['`origin`', null, 'own'],
    ]);
  });

  it('keep to their flight where another is written in front of it', async () => {
    const second = 'number: 2, date: 2027-05-02, time: 20 s';
    const { entries } = await reviewBetween(
      { [plover]: flown(second) },
      { [plover]: flown('number: 1, date: 2027-05-01, time: 10 s', second) },
    );
    expect(entries[0]?.flights.map(({ number, change }) => [number, change])).toEqual([[1, 'added']]);
  });

  it('are none where one value stands with or without a list around it', async () => {
    const file = (evidence: string) =>
      flown(`number: 1, date: 2027-05-01, time: 10 s, evidence: ${evidence}`);
    const { entries } = await reviewBetween(
      { [plover]: file('https://a.example/1') },
      { [plover]: file('[https://a.example/1]') },
    );
    expect(entries[0]?.values).toEqual([]);
  });
});

describe('figures that moved', () => {
  it('are told beyond a thousandth of themselves only', async () => {
    const heavier = async (airframe: string) => {
      const { entries } = await reviewBetween(
        {},
        { [plover]: entryFile('Plover').replace('100 g', airframe) },
      );
      return entries[0]?.figures.map(({ id }) => id) ?? [];
    };
    // A tenth of a per cent of 100 g is 0.1 g.
    expect(await heavier('100.09 g')).not.toContain('airframe-mass');
    expect(await heavier('100.11 g')).toContain('airframe-mass');
  });

  it('are told of an aircraft whose rubber was measured anew, though nobody wrote in its files', async () => {
    const batch = (density: string) =>
      `---\nlabel: A\nstrip: { width: 3 mm, thickness: 1 mm }\ndensity: ${density}\n---\n`;
    const files = (density: string): Files => ({
      'rubber/a.md': batch(density),
      [plover]: entryFile('Plover').replace(
        '[{ count: 2 }]',
        '[{ count: 2, skein: { batch: a, strands: 6, length: 400 mm } }]',
      ),
    });
    const { entries } = await reviewBetween(files('0.92 g/cm3'), files('0.95 g/cm3'));
    expect(entries.map(({ entry, change }) => [entry, change])).toEqual([['plover', 'touched']]);
    expect(entries[0]?.figures.map(({ id }) => id)).toContain('rubber-mass');
  });
});

describe('an aircraft under another name', () => {
  it('is the same one where it says what it was called, with the same flights and place', async () => {
    const flight = 'flights: [{ number: 1, date: 2027-05-02, time: 10 s }]';
    const ranked =
      '---\ntitle: Long Haul\nopens: 2027-03-01\ncloses: 2027-10-31\nscoring: { provisional: ranked }\n---\n';
    const files = (name: string, ...more: string[]) => ({
      'challenges/haul.md': ranked,
      [`entries/haul/${name}/entry.md`]: entryFile('Dunlin', flight, ...more),
    });
    const { entries, concerns, places } = await reviewBetween(
      files('dunlin'),
      files('stint', 'formerly: [dunlin]'),
    );
    expect(entries).toMatchObject([{ entry: 'stint', was: 'dunlin', change: 'renamed', flights: [] }]);
    expect(concerns).toEqual([]);
    expect(places).toEqual([]);
  });
});

describe('an aircraft that could not be read', () => {
  const broken = { [plover]: entryFile('Plover').replace('1.2 m', '1.2') };
  const flight = 'number: 1, date: 2027-03-02, time: 10 s';

  it('is said to be so, and its flights are not said to be taken out', async () => {
    const { entries, concerns } = await reviewBetween({ [plover]: flown(flight) }, broken);
    expect(entries).toMatchObject([{ change: 'not-readable', name: 'Plover', flights: [] }]);
    expect(kindsOf(concerns)).toEqual(['entry-not-readable']);
  });

  it('is none that is new once it can be read, and nobody asks why its flights come so late', async () => {
    const { entries, concerns } = await reviewBetween(broken, { [plover]: flown(flight) });
    expect(entries).toMatchObject([{ change: 'readable-again' }]);
    expect(concerns).toEqual([]);
  });
});

describe('the name of a junior', () => {
  it('is not repeated, neither from an entry nor from the file of a builder', async () => {
    const single = entryFile('Plover').replace(
      'amarsh',
      '{ handle: amarsh, name: Wren Marsh, junior: true }',
    );
    const team = entryFile('Plover').replace(
      'amarsh',
      '[{ handle: amarsh, name: Wren Marsh, junior: true }, { handle: bwren, club: Fen School }]',
    );
    const file = '---\nname: Wren Marsh\nclub: Fen School\njunior: true\n---\n';
    const changes: readonly Files[] = [
      { [plover]: single },
      { [plover]: team },
      { 'builders/amarsh.md': file },
    ];
    for (const change of changes)
      expect(JSON.stringify(await reviewBetween({}, change))).not.toMatch(/Wren Marsh|Fen School/);
  });
});

describe('problems', () => {
  it('are new or gone, and the same where they only moved to another line', async () => {
    const bad = (line: string) =>
      entryFile('Plover', ...(line === '' ? [] : [line]), 'glides: [{ hight: 3 m }]');
    const moved = await reviewBetween({ [plover]: bad('') }, { [plover]: bad('origin: own') });
    expect(moved.problems).toEqual({ fresh: [], gone: [] });
    const mended = await reviewBetween({ [plover]: bad('') }, {});
    expect(mended.problems.fresh).toEqual([]);
    expect(mended.problems.gone.length).toBeGreaterThan(0);
    const made = await reviewBetween({}, { [plover]: bad('') });
    expect(made.problems.fresh).toHaveLength(mended.problems.gone.length);
  });
});

describe('what a person should look at', () => {
  it('is who would be named from now on, where a junior went by handle', async () => {
    const builder = (junior: boolean) => ({
      'builders/amarsh.md': `---\nname: A. Marsh\njunior: ${junior}\n---\n`,
    });
    const { concerns } = await reviewBetween(builder(true), builder(false));
    expect(concerns).toContainEqual({ kind: 'junior-no-more', handle: 'amarsh' });
  });

  it('is a builder written over another', async () => {
    const { concerns } = await reviewBetween(
      {},
      { [plover]: entryFile('Plover').replace('amarsh', 'bwren') },
    );
    expect(concerns).toContainEqual({
      kind: 'builders-changed',
      challenge: 'haul',
      entry: 'plover',
      name: 'Plover',
      before: ['amarsh'],
      after: ['bwren'],
    });
  });

  it('is an aircraft of somebody else, by who built it before the change', async () => {
    const change = { [plover]: entryFile('Plover').replace('amarsh', 'bwren') };
    expect(kindsOf((await reviewBetween({}, change, { author: 'bwren' })).concerns)).toContain(
      'not-the-author',
    );
    const own = { [plover]: entryFile('Plover', 'origin: own') };
    expect(kindsOf((await reviewBetween({}, own, { author: 'AMarsh' })).concerns)).not.toContain(
      'not-the-author',
    );
  });

  it('is a flight handed in after the last day for it', async () => {
    const rules = {
      'challenges/haul.md':
        '---\ntitle: Long Haul\nopens: 2027-03-01\ncloses: 2027-05-01\nreport-by: 2027-05-15\n---\n',
    };
    const change = { ...rules, [plover]: flown('number: 1, date: 2027-05-01, time: 10 s') };
    const late = await reviewBetween(rules, change, { on: '2027-05-16' });
    expect(late.concerns).toMatchObject([{ kind: 'handed-in-late', flights: [1], reportBy: '2027-05-15' }]);
    expect((await reviewBetween(rules, change, { on: '2027-05-15' })).concerns).toEqual([]);
  });

  it('is no day that the date line explains', async () => {
    const change = { [plover]: flown('number: 1, date: 2027-05-02, time: 10 s') };
    expect((await reviewBetween({}, change, { on: '2027-05-01' })).concerns).toEqual([]);
    expect(kindsOf((await reviewBetween({}, change, { on: '2027-04-30' })).concerns)).toEqual([
      'flown-after-handing-in',
    ]);
  });
});

describe('the summary', () => {
  it('of a very large change keeps within what a page of a forge holds, and says how much more there is', async () => {
    const many: Record<string, string> = {};
    const flights = Array.from(
      { length: 12 },
      (_, at) => `number: ${at + 1}, date: 2027-05-02, time: ${at + 10} s`,
    );
    for (let at = 0; at < 60; at++) many[`entries/haul/model-${at}/entry.md`] = flown(...flights);
    const told = reviewMarkdown(await reviewBetween({}, many));
    expect(Buffer.byteLength(told)).toBeLessThanOrEqual(60_000);
    expect(told).toMatch(/^\*\*Adds 60 aircraft with 720 flights; nobody’s place changes\.\*\*\n/);
    expect(told).toMatch(/and \d+ more/);
  });

  it('of no change says so', async () => {
    expect(reviewMarkdown(await reviewBetween({}, {}))).toBe('**Nothing in the content changes.**\n');
  });
});
