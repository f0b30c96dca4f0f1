import type { TimingRules } from '../../model/challenge.ts';
import { type Family, unknownChoice } from './family.ts';

type Word = 'resolution' | 'round' | 'combine';

/** A rule of timing that is one of a few words. */
function ofTiming<Rule extends Word>(
  rule: Rule,
  words: readonly TimingRules[Rule][],
  accepted: string,
): Family {
  return {
    option: rule,
    usual: () => words,
    change: (challenge, _, choice) => {
      const word = words.find((one) => one === choice);
      if (word === undefined) return unknownChoice(rule, choice, accepted);
      if (challenge.timing[rule] === word) return null;
      return { ...challenge, timing: { ...challenge.timing, [rule]: word } };
    },
  };
}

/** To what part of a second an official time is read. */
export const resolution = ofTiming('resolution', ['0.01', '0.1', '1'], '0.01, 0.1 and 1 (in seconds)');

/** How it is brought there. */
export const round = ofTiming('round', ['down', 'nearest'], '"down" and "nearest"');

/** How several watches become one time. */
export const combine = ofTiming('combine', ['mean', 'median', 'lowest'], '"mean", "median" and "lowest"');
