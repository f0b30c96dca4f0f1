import { describe, expect, it } from 'vitest';
import type { Almanac, BuilderRecord, ChallengeRecord } from '../../src/almanac/almanac.ts';
import { careerOf } from '../../src/almanac/career.ts';
import { noHistory } from '../contest/history/no-history.ts';
import { challengeRecord, entryRecord } from '../pages/almanac-fixture.ts';

// Invented flights: the times and days stand below.

function flown(entry: string, number: number, seconds: number, date: string) {
  const moment = { date, time: null, offset: null, written: date };
  return { entry, number, builders: ['mthorn'], flown: moment, seconds, span: null, reachedTarget: false };
}

function season(id: string, flights: readonly ReturnType<typeof flown>[]): ChallengeRecord {
  const record = challengeRecord([40], [entryRecord('heron', 40, { challenge: id })]);
  return {
    ...record,
    challenge: { ...record.challenge, id },
    history: { ...noHistory, flights },
  };
}

function careerIn(...seasons: readonly ChallengeRecord[]) {
  const builder = {
    builder: { handle: 'mthorn' },
    entries: seasons.map(({ challenge }) => ({ challenge: challenge.id, entry: 'heron' })),
  } as unknown as BuilderRecord;
  return careerOf({ challenges: seasons, leftOut: [] } as Pick<Almanac, 'challenges' | 'leftOut'>, builder);
}

describe('what a builder did', () => {
  it('counts accepted flights over all challenges and takes the longest', () => {
    const career = careerIn(
      season('new', [flown('heron', 1, 38, '2032-05-01'), flown('heron', 2, 44, '2032-05-02')]),
      season('old', [flown('heron', 1, 41, '2031-05-01')]),
    );
    expect(career.accepted).toBe(3);
    expect(career.entries.map(({ accepted, best }) => [accepted, best?.seconds])).toEqual([
      [2, 44],
      [1, 41],
    ]);
    expect(career.best).toMatchObject({ home: { challenge: { id: 'new' } }, best: { number: 2 } });
  });

  it('gives equal times to the earlier day', () => {
    const career = careerIn(
      season('new', [flown('heron', 1, 44, '2032-05-01')]),
      season('old', [flown('heron', 1, 44, '2031-05-01')]),
    );
    expect(career.best?.home.challenge.id).toBe('old');
  });

  it('has no best where nothing was accepted, and knows the aircraft all the same', () => {
    const career = careerIn(season('new', []));
    expect(career).toMatchObject({ best: null, accepted: 0, entries: [{ entry: 'heron', accepted: 0 }] });
  });

  it('leaves out what others flew', () => {
    expect(careerIn(season('new', [flown('bittern', 1, 90, '2032-05-01')])).accepted).toBe(0);
  });
});
