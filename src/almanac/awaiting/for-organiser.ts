import { type Deadline, deadlines } from '../../contest/rules/deadlines.ts';
import type { Content } from '../../entries/folder/content.ts';
import type { Problem } from '../../entries/problems/problem.ts';
import type { CalendarDate } from '../../model/calendar.ts';
import type { ChallengeState } from '../../model/challenge.ts';
import type { Almanac, ChallengeRecord } from '../almanac.ts';
import { entrantsOf, type SealFlights } from '../entrants.ts';
import { todayIn } from '../today.ts';
import type { AwaitingEntry } from './awaiting.ts';
import { type ChangedAfterRuling, changedAfterRuling } from './changed-after-ruling.ts';
import { type FileHistory, type HandleByOthers, handlesByOthers } from './handles-by-others.ts';
import { type ChangedRules, type RulesVersion, rulesAfterOpening } from './rules-after-opening.ts';

/** What the history of the content folder tells; null where there is none to look at. */
export interface Past {
  readonly files: readonly FileHistory[];
  /** Committed versions of the rules by challenge, oldest first. */
  readonly rules: ReadonlyMap<string, readonly RulesVersion[]>;
}

/** Everything one challenge has for its organiser to look at. */
export interface ForOrganiser {
  readonly challenge: string;
  readonly title: string;
  readonly state: ChallengeState;
  readonly today: CalendarDate;
  readonly awaiting: readonly AwaitingEntry[];
  readonly changedAfterRuling: readonly ChangedAfterRuling[];
  /** Neutral notes of the checks on its entries and rulings. */
  readonly doubts: readonly Problem[];
  readonly leftOut: readonly string[];
  readonly handles: readonly HandleByOthers[];
  readonly rules: readonly ChangedRules[];
  /** Dates from today on, in their order. */
  readonly deadlines: readonly Deadline[];
  /** True where the day of the final result has come and it is not frozen. */
  readonly closeNow: boolean;
  /** What the evidence has to show under these rules. */
  readonly shows: readonly string[];
}

/** Told among what waits or what changed already. */
const toldElsewhere = new Set(['acceptance-lapsed', 'flight-does-not-count']);

/** What awaits the organiser, challenge by challenge in the order of the almanac. */
export function forOrganiser(
  content: Content,
  almanac: Almanac,
  sealFlights: SealFlights,
  past: Past | null,
): readonly ForOrganiser[] {
  const contenders = entrantsOf(content, sealFlights).map(({ contender }) => contender);
  const handles = past === null ? [] : handlesByOthers(filesNaming(content), past.files);
  return almanac.challenges.map((record) => {
    const { challenge, state, awaiting } = record;
    const { id, title, final } = challenge;
    const today = todayIn(almanac.now, challenge.timeZone);
    const own = contenders.filter(({ entry }) => entry.challenge === id);
    const open = state !== 'final';
    return {
      challenge: id,
      title,
      state,
      today,
      awaiting,
      changedAfterRuling: open ? changedAfterRuling(challenge, own) : [],
      doubts: open ? doubtsOf(record, almanac.problems) : [],
      leftOut: almanac.leftOut.filter((one) => one.challenge === id).map(({ entry }) => entry),
      handles: handles.filter(({ file }) => file.startsWith(`entries/${id}/`)),
      rules: rulesOf(content, id, past, today),
      deadlines: open ? deadlines(challenge).filter(({ date }) => date >= today) : [],
      closeNow: open && final !== null && final <= today,
      shows: challenge.flying.evidence.shows,
    };
  });
}

function doubtsOf({ challenge }: ChallengeRecord, problems: readonly Problem[]): readonly Problem[] {
  const folders = [`entries/${challenge.id}/`, `rulings/${challenge.id}/`];
  return problems.filter(
    ({ file, severity, code }) =>
      severity !== 'error' && !toldElsewhere.has(code) && folders.some((folder) => file.startsWith(folder)),
  );
}

function filesNaming(content: Content): { readonly file: string; readonly handle: string }[] {
  return [
    ...content.builders.map(({ value, source }) => ({ file: source.file, handle: value.handle })),
    ...content.entries.flatMap(({ value, source }) =>
      value.builders.map(({ handle }) => ({ file: source.file, handle })),
    ),
  ];
}

function rulesOf(
  content: Content,
  id: string,
  past: Past | null,
  today: CalendarDate,
): readonly ChangedRules[] {
  const committed = past?.rules.get(id) ?? [];
  const written = content.challenges.find(({ value }) => value.id === id)?.value;
  if (written === undefined) return rulesAfterOpening(committed);
  return rulesAfterOpening([...committed, { date: today, version: null, challenge: written }]);
}
