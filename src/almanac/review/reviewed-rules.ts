import { ruleChanges } from '../../contest/rules/rule-changes.ts';
import type { Challenge } from '../../model/challenge.ts';
import type { ReviewedRules } from './review.ts';
import type { Side, Sides } from './side.ts';

/** The rules that are not what they were, of challenges that both sides have. */
export function reviewedRules(sides: Sides): readonly ReviewedRules[] {
  const before = challengesOf(sides.before);
  return [...challengesOf(sides.after)].flatMap(([id, challenge]) => {
    const was = before.get(id);
    const changes = was === undefined ? [] : ruleChanges(was, challenge);
    return changes.length === 0 ? [] : [{ challenge: id, changes }];
  });
}

/** The challenges of a side as they are written, by name: where a result is frozen, the almanac has them as they were then. */
export function challengesOf({ content }: Side): ReadonlyMap<string, Challenge> {
  return new Map(content.challenges.map(({ value }) => [value.id, value]));
}
