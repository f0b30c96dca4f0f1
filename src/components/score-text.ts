import type { Challenge } from '../model/challenge.ts';
import { secondsAt } from './measure.ts';

/** A score is rounded to this many seconds where it is more than official times added up. */
const finest = '0.001';

/** A score as a board shows it: as fine as its times are, or as scores are rounded where they are averaged or scaled. */
export function scoreText(challenge: Challenge, score: number): string {
  return secondsAt(score, timesOnly(challenge) ? challenge.timing.resolution : finest);
}

/** True where a score is one official time, which a target of the challenge can be held against. */
export function scoreIsTime({ scoring }: Challenge): boolean {
  return scoring.method === 'best' && scoring.scale === null;
}

function timesOnly({ scoring }: Challenge): boolean {
  return scoring.method !== 'mean' && scoring.scale === null;
}
