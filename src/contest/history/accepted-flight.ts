import type { Moment } from '../../model/calendar.ts';

/** A flight as history sees it: accepted, of an entry that has its part in the result. */
export interface AcceptedFlight {
  readonly entry: string;
  readonly number: number;
  /** Handles of the builders of the entry. */
  readonly builders: readonly string[];
  readonly flown: Moment;
  /** The official time, s: no cap, no handicap. */
  readonly seconds: number;
  /** Of the setup it was flown in, m; null where it is not known. The uncertainty is null where nobody can tell it. */
  readonly span: { readonly value: number; readonly u: number | null } | null;
  readonly reachedTarget: boolean;
}

/** The same, with the divisions the flight belongs to. */
export interface FlightInDivisions extends AcceptedFlight {
  readonly divisions: readonly string[];
}
