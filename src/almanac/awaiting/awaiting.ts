import type { Stale } from '../../contest/standing.ts';
import type { CalendarDate } from '../../model/calendar.ts';

/** One thing that a flight waits for. */
export type Wait =
  | { readonly kind: 'ruling' }
  /** It was ruled on, and what the ruling rests on is no longer so. */
  | { readonly kind: 'new-ruling'; readonly ruledOn: CalendarDate; readonly changes: readonly Stale[] }
  | { readonly kind: 'evidence'; readonly given: number; readonly needed: number }
  | {
      readonly kind: 'timekeepers';
      readonly given: number;
      readonly needed: number;
      readonly orVideo: boolean;
    }
  /** A measured value just outside a limit, by less than its measuring error: the ruling decides. */
  | { readonly kind: 'near-limit'; readonly sentence: string }
  /** The same value has only been measured by the builder: an inspection would tell more. */
  | { readonly kind: 'inspection'; readonly figure: string };

/** What an acceptance would do to the entry's place; null for no place. */
export interface PlaceIfAccepted {
  readonly before: number | null;
  readonly after: number | null;
}

export interface AwaitingFlight {
  readonly number: number;
  readonly date: CalendarDate;
  /** Whole days from the day of the flight to today; never negative. */
  readonly days: number;
  /** Official time as it stands, seconds. */
  readonly seconds: number;
  readonly waits: readonly Wait[];
  readonly place: PlaceIfAccepted;
}

/** The flights of one entry that wait for something, the oldest first. Never empty. */
export interface AwaitingEntry {
  readonly entry: string;
  readonly name: string;
  readonly flights: readonly AwaitingFlight[];
}
