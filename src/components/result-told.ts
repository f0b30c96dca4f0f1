import type { ChallengeRecord } from '../almanac/almanac.ts';
import { words } from '../words.ts';
import { scoreText } from './score-text.ts';

/** How an aircraft came out of a challenge, or stands in it: "place 2, 41.7 s", else why it has no place. */
export function resultTold({ challenge, result }: ChallengeRecord, entry: string): string {
  const standing = result.standings.find((one) => one.entry === entry);
  if (standing !== undefined)
    return words.builder.placeOf(standing.place, scoreText(challenge, standing.score));
  return result.unplaced.find((one) => one.entry === entry)?.reason ?? '–';
}
