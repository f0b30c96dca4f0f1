import { describe, expect, it } from 'vitest';
import { keptAddresses } from '../../src/publish/keep-addresses.ts';
import { almanac, challengeRecord } from './sample-almanac.ts';

const files = ['index.html', 'left-out/index.html', 'data/long-haul.json', 'data/long-haul.csv'];

describe('addresses kept beside the pages', () => {
  it('are none where nothing is gone', () => {
    expect(keptAddresses(almanac, files, ['/', '/left-out/'])).toEqual([]);
  });

  it('are the data files of a challenge under its old name', () => {
    const renamed = { ...challengeRecord, challenge: { ...challengeRecord.challenge, formerly: ['haul'] } };
    expect(keptAddresses({ ...almanac, challenges: [renamed] }, files, [])).toEqual([
      { from: 'data/long-haul.json', to: 'data/haul.json' },
      { from: 'data/long-haul.csv', to: 'data/haul.csv' },
    ]);
  });

  it('are notices for what went with a file that was left out', () => {
    const left: typeof almanac = {
      ...almanac,
      leftOut: [{ challenge: 'long-haul', entry: 'godwit' }],
      files: [{ file: 'rubber/fen-a.md', fate: 'left-out', why: 'x' }],
    };
    expect(
      keptAddresses(left, files, ['/builders/otter/', '/rubber/fen-a/', '/rubber/fen-b/', '/house/']),
    ).toEqual([
      { from: 'left-out/index.html', to: 'builders/otter/index.html' },
      { from: 'left-out/index.html', to: 'rubber/fen-a/index.html' },
    ]);
  });
});
