import type { Challenge } from '../../model/challenge.ts';
import type { Contender } from '../contender.ts';
import type { FrozenRecord, FrozenResult } from '../frozen/frozen.ts';
import { targetWhenFrozen } from '../frozen/target-when-frozen.ts';
import type { ContestResult } from '../standing.ts';
import type { AcceptedFlight } from './accepted-flight.ts';
import { flightsOfFrozen } from './flights-of-frozen.ts';
import { flightsOfResult } from './flights-of-result.ts';
import { type Honour, honourRoll } from './honour-roll.ts';
import { type Milestone, milestonesPassed } from './milestones.ts';
import { type PersonalBest, personalBests } from './personal-bests.ts';
import { progressOfSpan, progressOfTime, type Step } from './progress.ts';
import { recordsAmong } from './records.ts';

/** A record that stands, with the uncertainty of a span where it is known. */
export interface StandingRecord extends FrozenRecord {
  readonly u: number | null;
}

/** What happened in a challenge, from its accepted flights. */
export interface History {
  /** In the order flown. */
  readonly flights: readonly AcceptedFlight[];
  /** The target the history is told by: of a final challenge, the one that was frozen. */
  readonly target: Challenge['target'];
  /** Of the best official time, s. */
  readonly time: readonly Step[];
  /** Of the largest span that reached the target, m. */
  readonly span: readonly Step[];
  readonly honour: readonly Honour[];
  readonly milestones: readonly Milestone[];
  /** Of all entries (division null), then of each division. */
  readonly records: readonly StandingRecord[];
  readonly personalBests: readonly PersonalBest[];
}

/**
 * The history of a challenge: of a final one as it was frozen, so that nothing is rewritten afterwards; else from the
 * flights as they are judged now. The order of the contenders does not matter.
 */
export function historyOf(
  challenge: Challenge,
  result: Pick<ContestResult, 'entries'>,
  contenders: readonly Contender[],
  frozen: FrozenResult | null,
): History {
  const today = flightsOfResult(challenge, result, contenders);
  const flights = frozen === null ? today : flightsOfFrozen(challenge, frozen, today);
  const target = frozen === null ? challenge.target : targetWhenFrozen(challenge, frozen);
  const records = frozen === null ? recordsAmong(challenge, today) : frozen.records;
  return {
    flights,
    target,
    time: progressOfTime(flights),
    span: progressOfSpan(flights, target !== null),
    honour: honourRoll(flights),
    milestones: milestonesPassed(challenge.milestones, flights),
    records: records.map((record) => ({ ...record, u: uncertaintyOf(record, flights) })),
    personalBests: personalBests(flights),
  };
}

function uncertaintyOf(record: FrozenRecord, flights: readonly AcceptedFlight[]): number | null {
  if (record.kind !== 'span') return null;
  const flight = flights.find(({ entry, number }) => entry === record.entry && number === record.flight);
  return flight?.span?.value === record.value ? flight.span.u : null;
}
