import type { CalendarDate } from '../model/calendar.ts';
import type { ChallengeState } from '../model/challenge.ts';
import type { OfficialTime } from '../timing/official-time.ts';

export type Status =
  | 'withdrawn'
  | 'void'
  | 'refused'
  | 'outside-dates'
  | 'reported-late'
  | 'ineligible'
  | 'attempt'
  | 'accepted'
  | 'provisional';

/** Something that was ruled and no longer fits what is written now. */
export interface Stale {
  /** `seal`, `setup`, or the id of a fact or figure. */
  readonly what: string;
  readonly ruled: string;
  readonly now: string;
}

export interface JudgedFlight {
  readonly number: number;
  readonly date: CalendarDate;
  readonly official: OfficialTime;
  readonly status: Status;
  /** Why, in a sentence fit for a public page; null for a plain accepted or provisional flight. */
  readonly reason: string | null;
  /** The setup it was flown in; null for the entry as first written. */
  readonly setup: string | null;
  /** Capped and scaled, rounded half up to 0.001 s; null where the flight cannot score. */
  readonly score: number | null;
  readonly scoreU: number;
  readonly counted: boolean;
  /** Not empty only where an acceptance lapsed. */
  readonly stale: readonly Stale[];
  readonly reachedTarget: boolean;
}

export interface JudgedEntry {
  readonly entry: string;
  readonly flights: readonly JudgedFlight[];
  /** Number of the best counted flight, else null. */
  readonly bestCounted: number | null;
  readonly bestProvisional: number | null;
  /** The setup of the best counted flight, else of the best provisional one, else the latest (id; null = first written). */
  readonly headlineSetup: string | null;
  readonly divisions: readonly string[];
  /** Why the whole entry has no place, where that is so. */
  readonly unplaced: string | null;
}

export interface Standing {
  readonly place: number;
  readonly entry: string;
  readonly divisions: readonly string[];
  /** Seconds, rounded. */
  readonly score: number;
  readonly u: number;
  readonly provisional: boolean;
  readonly flights: readonly number[];
  /** The step that parted it from an equal neighbour; null where none was needed. */
  readonly tieBreak: string | null;
  readonly withinTimingErrorOf: readonly string[];
}

export interface Claim {
  readonly entry: string;
  readonly score: number;
  readonly flights: readonly number[];
}

export interface Unplaced {
  readonly entry: string;
  readonly reason: string;
}

/** Everything a challenge's rules say about its entries. */
export interface ContestResult {
  readonly state: ChallengeState;
  readonly entries: ReadonlyMap<string, JudgedEntry>;
  readonly standings: readonly Standing[];
  readonly claims: readonly Claim[];
  readonly unplaced: readonly Unplaced[];
  readonly divisions: ReadonlyMap<string, readonly Standing[]>;
}
