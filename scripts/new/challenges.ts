import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { todayIn } from '../../src/almanac/today.ts';
import { challengeState } from '../../src/contest/rules/state.ts';
import { readSource } from '../../src/entries/source/read-source.ts';
import { splitPlain } from '../../src/entries/source/split-plain.ts';
import { understandChallenge } from '../../src/entries/understand/challenge.ts';
import type { Challenge, ChallengeState } from '../../src/model/challenge.ts';
import { UsageError } from '../terminal/command-line.ts';
import { printable } from '../terminal/printable.ts';
import { challengesIn } from './places.ts';

/** A challenge that something new may belong to; its rules are null where their file cannot be read, and then its state too. */
export interface KnownChallenge {
  readonly id: string;
  readonly challenge: Challenge | null;
  readonly state: ChallengeState | null;
}

const order: readonly (ChallengeState | null)[] = ['open', 'announced', 'closed', 'final', null];

/** The challenges of a content folder: those that are open first, final ones last. */
export function knownChallenges(folder: string, now: string): readonly KnownChallenge[] {
  return challengesIn(folder)
    .map((id) => knownChallenge(folder, id, now))
    .sort((one, other) => order.indexOf(one.state) - order.indexOf(other.state));
}

/** One challenge as its files say it. */
export function knownChallenge(folder: string, id: string, now: string): KnownChallenge {
  const file = `challenges/${id}.md`;
  const isFrozen = existsSync(join(folder, 'results', `${id}.json`));
  const { source } = readSource(file, readFileSync(join(folder, file), 'utf8'), splitPlain);
  const challenge = source === null ? null : understandChallenge(source, { id }).challenge;
  const state =
    challenge === null
      ? isFrozen
        ? 'final'
        : null
      : challengeState(challenge, todayIn(now, challenge.timeZone), isFrozen);
  return { id, challenge, state };
}

/** What a challenge is called where one chooses, such as `summer (Summer 2027, open)`. */
export function calledWithState({ id, challenge, state }: KnownChallenge): string {
  const title = challenge === null ? 'its rules cannot be read' : printable(challenge.title);
  return `${id} (${[title, ...(state === null ? [] : [state])].join(', ')})`;
}

/** Throws a UsageError where an aircraft can no longer enter. */
export function refuseFinal({ id, state }: KnownChallenge): void {
  if (state !== 'final') return;
  throw new UsageError(
    `The result of ${id} is final, so no aircraft enters it any more. Name another challenge, or leave the name out and choose one at a terminal.`,
  );
}
