import type { Challenge } from '../../model/challenge.ts';
import type { Contender } from '../contender.ts';

/** What an organiser typed that is no such rule: a full sentence. */
export interface NotARule {
  readonly fault: string;
}

/** The rules with one of them changed; null where this challenge has that rule already, or has no use for it. */
export type Changed = Challenge | null;

/**
 * One rule that may be chosen otherwise: what it is called on the command line, the choices usual for a challenge, and
 * how a choice changes the rules. A choice is a short text such as `sum:3`.
 */
export interface Family {
  readonly option: string;
  readonly usual: (challenge: Challenge, contenders: readonly Contender[]) => readonly string[];
  readonly change: (
    challenge: Challenge,
    contenders: readonly Contender[],
    choice: string,
  ) => Changed | NotARule;
}

/** True for a sentence about a choice that cannot be read. */
export function isNotARule(changed: Changed | NotARule): changed is NotARule {
  return changed !== null && 'fault' in changed;
}

/** The sentence about a choice that an option does not know. */
export function unknownChoice(option: string, choice: string, accepted: string): NotARule {
  return { fault: `--${option} does not know "${choice}"; it takes ${accepted}.` };
}
