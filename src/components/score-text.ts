import { scoreText as scoreInSeconds } from '../contest/ranking/score-in-words.ts';
import type { Challenge } from '../model/challenge.ts';

/** A score as a board shows it: as fine as its times are, or as scores are rounded where they are averaged or scaled. */
export function scoreText(challenge: Challenge, score: number): string {
  return scoreInSeconds(challenge, score).replace(' ', '\u00a0');
}

/** True where a score is one official time, which a target of the challenge can be held against. */
export function scoreIsTime({ scoring }: Challenge): boolean {
  return scoring.method === 'best' && scoring.scale === null;
}
