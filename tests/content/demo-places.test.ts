import { resolve } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Almanac } from '../../src/almanac/almanac.ts';
import { readAlmanac } from '../../src/almanac/read-almanac.ts';

// The first five places of each challenge of the demo, worked out by hand from the watches that stand in the entries.

const content = resolve(import.meta.dirname, '../../content');
let almanac: Almanac;

beforeAll(async () => {
  almanac = await readAlmanac({ content, now: '2026-11-25T12:00:00Z' });
});

function firstFive(challenge: string) {
  const record = almanac.challenges.find((one) => one.challenge.id === challenge);
  return record?.result.standings
    .filter(({ place }) => place <= 5)
    .map(({ place, entry, score }) => [place, entry, score]);
}

describe('the first five places, by hand', () => {
  it('of the sum of three: the middle of the watches, to the nearest second, no more than 180 s', () => {
    expect(firstFive('slow-thread-2025')).toEqual([
      // 103.95 → 104, 131.0 → 131, 147.8 → 148: 383; its next best, 71.0 → 71, beats the other's 21.8 → 22.
      [1, 'treadle', 383],
      // 118.1 → 118, 125.8 → 126, 139.4 → 139: 383; its flight of 46.9 s was refused.
      [2, 'twill', 383],
      // 92 + 110 + 115.
      [3, 'heddle', 317],
      // 58 + 80 + 84.
      [4, 'tante-odile', 222],
      // 63.0 → 63, 71.15 → 71, 77.8 → 78.
      [5, 'dluga-nic', 212],
    ]);
  });

  it('of the best flight: the mean of the watches, cut off after the tenth', () => {
    expect(firstFive('slow-thread-2026')).toEqual([
      // (194.82 + 194.70) / 2 = 194.76.
      [1, 'organza', 194.7],
      // (167.5 + 167.6) / 2 = 167.55.
      [2, 'shuttle', 167.5],
      // (121.3 + 121.2) / 2 = 121.25.
      [3, 'lease-rod', 121.2],
      // (103.30 + 103.18) / 2 = 103.24.
      [4, 'dluga-nic', 103.2],
      // (90.48 + 90.41) / 2 = 90.445; its flight of 121.9 s waits for a ruling.
      [5, 'overdue', 90.4],
    ]);
  });

  it('of the mean of three: the middle watch to the nearest tenth, no more than 360 s, by the root of the span', () => {
    const table = firstFive('hall-thread-2026') ?? [];
    expect(table.map(([place, entry]) => [place, entry])).toEqual([
      [1, 'gauze'],
      [2, 'cobweb'],
      [3, 'bolting-cloth'],
      [4, 'two-spools'],
      [5, 'fent'],
    ]);
    const byHand = [
      // 368.5 is 360 at the most; 349.7, 327.1: 1036.8 / 3 = 345.6. √(500 / 553) = 0.950871; 345.6 × it = 328.621.
      328.621,
      // 284.8 + 278.1 + 260.6 = 823.5; / 3 = 274.5. √(500 / 460) = 1.042572; 274.5 × it = 286.186.
      286.186,
      // Two watches, their middle: 238.3 + 227.5 + 211.8 = 677.6; / 3 = 225.867; the span is 500 mm.
      225.867,
      // 216.8 + 209.8 + 202.3 = 628.9; / 3 = 209.633. √(500 / 600) = 0.912871; 209.633 × it = 191.368.
      191.368,
      // 85.9 + 81.3 + 62.7 = 229.9; / 3 = 76.633. √(500 / 400) = 1.118034; 76.633 × it = 85.679.
      85.679,
    ];
    // Six digits of the root leave a thousandth or so of the larger scores open.
    for (const [index, [, , score]] of table.entries())
      expect(score).toBeCloseTo(byHand[index] ?? Number.NaN, 2);
  });

  it('of the rounds: the mean cut off to the second, 90 s and four times 75 s, then fly-offs of 105 and 135 s', () => {
    expect(firstFive('thread-fly-off-2026')).toEqual([
      // Full: 90 + 4 × 75 = 390. First fly-off 112.45, more than 105; second (121.7 + 121.9) / 2 = 121.8 → 121.
      [1, 'heald-eye', 390],
      // Full; its shortest was 77.95 in round 3. First fly-off 106.9, full; second (117.4 + 117.2) / 2 = 117.3 → 117.
      [2, 'picking-stick', 390],
      // Full; its shortest was 76.5. First fly-off (96.4 + 96.8) / 2 = 96.6 → 96.
      [3, 'dvojice', 390],
      // Full; its shortest was 75.5 → 75. First fly-off (96.2 + 96.5) / 2 = 96.35 → 96: the place is shared.
      [3, 'lam-stick', 390],
      // 90 + 75 + 74 + 75 + 75: the third round was (74.7 + 74.9) / 2 = 74.8 → 74.
      [5, 'back-to-front', 389],
    ]);
  });

  it('of the season to come is nobody', () => {
    expect(firstFive('slow-thread-2027')).toEqual([]);
  });
});
