import { expect, it } from 'vitest';
import { elsewhereOf } from '../../src/almanac/elsewhere.ts';
import { readAlmanac } from '../../src/almanac/read-almanac.ts';
import { entryFile, inFolder, soundFolder } from '../entries/content-folder.ts';

// An invented aircraft in three seasons: the second names the first, the third names the second.

const season = (year: number) =>
  `---\ntitle: Season ${year}\nopens: ${year}-03-01\ncloses: ${year}-10-31\n---\n`;

const almanac = await inFolder(
  {
    ...soundFolder,
    'challenges/s28.md': season(2028),
    'challenges/s29.md': season(2029),
    'entries/s28/plover/entry.md': entryFile('Plover', 'also: [haul/plover]'),
    'entries/s29/plover-two/entry.md': entryFile('Plover Two', 'also: [s28/plover]'),
  },
  (content) => readAlmanac({ content, now: '2029-06-01' }),
);

function elsewhere(challenge: string, id: string): string[] {
  const record = almanac.challenges
    .flatMap(({ entries }) => entries)
    .find(({ entry }) => entry.challenge === challenge && entry.id === id);
  return elsewhereOf(almanac, record!.entry).map(({ home, record: { entry } }) =>
    [home.challenge.id, entry.id].join('/'),
  );
}

it('finds an aircraft from both ends, the newest season first', () => {
  expect(elsewhere('s28', 'plover')).toEqual(['s29/plover-two', 'haul/plover']);
  expect(elsewhere('haul', 'plover')).toEqual(['s28/plover']);
});

it('goes one step only: what an entry does not name is not guessed', () => {
  expect(elsewhere('s29', 'plover-two')).toEqual(['s28/plover']);
});
