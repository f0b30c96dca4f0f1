import { type RuleChange, ruleChanges } from '../../contest/rules/rule-changes.ts';
import type { CalendarDate } from '../../model/calendar.ts';
import type { Amendment, Challenge } from '../../model/challenge.ts';

/** The rules as they stood from a day on. */
export interface RulesVersion {
  readonly date: CalendarDate;
  /** What names the version, such as the beginning of a commit's hash; null for what is not committed yet. */
  readonly version: string | null;
  readonly challenge: Challenge;
}

/** What one version of the rules changed while the challenge was already open. */
export interface ChangedRules {
  readonly date: CalendarDate;
  readonly version: string | null;
  readonly changes: readonly RuleChange[];
  /** Amendments that may tell of it; empty where none does. */
  readonly amendments: readonly Amendment[];
}

/**
 * Rules that changed on or after the opening day, as it was before the change. An amendment covers a change where it is
 * dated on that day or later, or came in with it: whether its words tell of that change is for people to read.
 *
 * @param versions oldest first, the last one as it is now
 */
export function rulesAfterOpening(versions: readonly RulesVersion[]): readonly ChangedRules[] {
  const now = versions.at(-1)?.challenge.amendments ?? [];
  return versions.slice(1).flatMap(({ date, version, challenge }, index) => {
    const before = versions[index]?.challenge;
    if (before === undefined || date < before.opens) return [];
    const changes = ruleChanges(before, challenge);
    if (changes.length === 0) return [];
    const had = new Set(before.amendments.map(keyOf));
    const cameAlong = new Set(challenge.amendments.map(keyOf).filter((key) => !had.has(key)));
    const amendments = now.filter((one) => one.date >= date || cameAlong.has(keyOf(one)));
    return [{ date, version, changes, amendments }];
  });
}

function keyOf({ date, what }: Amendment): string {
  return `${date} ${what}`;
}
