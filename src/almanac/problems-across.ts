import { checkAlsoDiffers } from '../entries/check-judged/also-differs.ts';
import { crossCheck } from '../entries/check-judged/cross-checks.ts';
import { checkFinalResult } from '../entries/check-judged/final-result-differs.ts';
import type { Content } from '../entries/folder/content.ts';
import type { Problem } from '../entries/problems/problem.ts';
import type { Entry } from '../model/entry.ts';
import type { ChallengeRecord } from './almanac.ts';
import type { Entrant } from './entrants.ts';
import { todayIn } from './today.ts';

/** What is found only where text, figures and verdicts come together; the order is left to the caller. */
export function problemsAcross(
  challenges: readonly ChallengeRecord[],
  entrants: readonly Entrant[],
  content: Content,
  now: string,
): Problem[] {
  const sources = new Map(entrants.map(({ read, contender }) => [keyOf(contender.entry), read.source]));
  const rulings = new Map(
    content.rulings.map(({ value, source }) => [
      keyOf({ challenge: value.challenge, id: value.entry }),
      source,
    ]),
  );
  const ofEntries = challenges.flatMap(({ challenge, state, entries }) => {
    const today = todayIn(now, challenge.timeZone);
    return entries.flatMap((record) => {
      const key = keyOf(record.entry);
      const source = sources.get(key);
      if (source === undefined) return [];
      return crossCheck({ record, source, rulings: rulings.get(key) ?? null, challenge, state, today });
    });
  });
  const ofResults = content.challenges.flatMap(({ value: challenge }) => {
    const frozen = challenges.find((record) => record.challenge.id === challenge.id)?.frozen ?? null;
    if (frozen === null) return [];
    const contenders = entrants
      .map(({ contender }) => contender)
      .filter(({ entry }) => entry.challenge === challenge.id);
    return checkFinalResult(challenge, contenders, frozen);
  });
  const newestFirst = challenges.flatMap(({ entries }) =>
    entries.flatMap(({ entry }) => {
      const source = sources.get(keyOf(entry));
      return source === undefined ? [] : [{ entry, source }];
    }),
  );
  return [...ofEntries, ...ofResults, ...checkAlsoDiffers(newestFirst)];
}

function keyOf({ challenge, id }: Pick<Entry, 'challenge' | 'id'>): string {
  return `${challenge}/${id}`;
}
