import { mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { cardOf } from '../../src/cards/card.ts';
import { cardPicture } from '../../src/cards/card-picture.ts';
import { writeCards } from '../../src/cards/write-cards.ts';
import { almanacOf, challengeRecord } from '../pages/almanac-fixture.ts';

let folder = '';
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'last-turn-cards-'));
});
afterEach(() => rm(folder, { recursive: true, force: true }));

const record = challengeRecord([41.7, 38.2]);
const almanac = almanacOf([record]);

describe('the cards of a site', () => {
  it('are where the pages say they are, and drawn once', async () => {
    const cache = join(folder, 'cache');
    await writeCards(almanac, cache, join(folder, 'one'));
    const { path } = cardPicture(cardOf(almanac, record));
    const drawn = await readFile(join(folder, 'one', path));
    expect(drawn.subarray(1, 4).toString()).toBe('PNG');

    const [making = ''] = await readdir(cache);
    const [kept = ''] = await readdir(join(cache, making));
    await writeFile(join(cache, making, kept), 'kept from before');
    await writeCards(almanac, cache, join(folder, 'two'));
    expect(await readFile(join(folder, 'two', path), 'utf8')).toBe('kept from before');

    const changed = almanacOf([challengeRecord([42, 38.2])]);
    await writeCards(changed, cache, join(folder, 'three'));
    const [other = ''] = await readdir(join(folder, 'three/assets/cards'));
    expect(path).not.toContain(other);
    expect((await readFile(join(folder, 'three/assets/cards', other))).subarray(1, 4).toString()).toBe('PNG');
  });

  it('are none where there is no challenge', async () => {
    await writeCards(almanacOf([]), join(folder, 'cache'), join(folder, 'site'));
    expect(await readdir(folder)).toEqual([]);
  });
});
