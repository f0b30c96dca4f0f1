import { words } from '../words.ts';
import { awaitingPath, boardPath, plotPath, recordsPath, rulesPath } from './link.ts';

/** A page of a challenge, beside its board. */
export interface ChallengeWay {
  readonly label: string;
  /** Site path. */
  readonly to: string;
}

/** The pages of one challenge in the order of its own menu. A new page of a challenge is one line here. */
export function challengeWays(challenge: string): ChallengeWay[] {
  return [
    { label: words.pages.board, to: boardPath(challenge) },
    { label: words.pages.rules, to: rulesPath(challenge) },
    { label: words.records.menu, to: recordsPath(challenge) },
    { label: words.plot.menu, to: plotPath(challenge) },
    { label: words.awaiting.menu, to: awaitingPath(challenge) },
  ];
}
