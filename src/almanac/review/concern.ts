import type { Stale } from '../../contest/standing.ts';
import type { CalendarDate } from '../../model/calendar.ts';
import type { FlightRuling, Verdict } from '../../model/ruling.ts';
import type { ChangedRules } from '../awaiting/rules-after-opening.ts';
import type { ChangedValue } from './changed-values.ts';

/** An aircraft that is spoken of. */
export interface Named {
  readonly challenge: string;
  readonly entry: string;
  readonly name: string;
}

export type RulingTold = Pick<
  FlightRuling,
  'verdict' | 'by' | 'second' | 'date' | 'received' | 'time' | 'reason' | 'seen'
>;

/** Something that a person should look at before the change is taken over. It says nothing against anybody. */
export type Concern =
  /** What a ruling rests on is not what it was: fields of the flight, or facts and figures of the aircraft. */
  | (Named & {
      readonly kind: 'ruled-flights-changed';
      /** Several where the same facts changed for all of them, and nothing else. */
      readonly flights: readonly { readonly number: number; readonly ruledOn: CalendarDate }[];
      readonly verdict: Verdict;
      readonly values: readonly ChangedValue[];
      readonly facts: readonly Stale[];
    })
  /** What rulings say that are new, other than before, or taken out: null on the side that has none. */
  | (Named & {
      readonly kind: 'rulings-written';
      readonly flights: readonly number[];
      readonly before: RulingTold | null;
      readonly after: RulingTold | null;
      /** Whether the flights themselves are new or changed with it. */
      readonly flightChanges: boolean;
    })
  | (Named & {
      readonly kind: 'flight-removed';
      readonly flight: number;
      readonly verdict: Verdict | null;
      readonly seconds: number;
    })
  | (Named & { readonly kind: 'flight-renumbered'; readonly was: number; readonly flight: number })
  | (Named & { readonly kind: 'entry-removed' | 'entry-not-readable' })
  | (Named & {
      readonly kind: 'builders-changed';
      readonly before: readonly string[];
      readonly after: readonly string[];
    })
  /** A builder who went by handle alone would be named from now on. */
  | { readonly kind: 'junior-no-more'; readonly handle: string }
  /** Files of these kinds make the contest, and organisers answer for them. */
  | { readonly kind: 'organisers-files'; readonly files: readonly string[]; readonly withEntries: boolean }
  | { readonly kind: 'several-builders'; readonly handles: readonly string[] }
  | (Named & {
      readonly kind: 'not-the-author';
      readonly author: string;
      readonly builders: readonly string[];
    })
  | { readonly kind: 'files-by-others'; readonly files: readonly string[] }
  /** Files that are no content; paths in the repository. */
  | { readonly kind: 'outside-content'; readonly files: readonly string[] }
  /** Accepted flights that nobody wrote anew, and that would count no more. */
  | {
      readonly kind: 'flights-count-no-more';
      readonly challenge: string;
      readonly flights: number;
      readonly aircraft: number;
    }
  | { readonly kind: 'handle-by-others'; readonly file: string; readonly handle: string }
  /** No amendment tells of it where `amendments` is empty. */
  | (ChangedRules & { readonly kind: 'rules-changed-after-opening'; readonly challenge: string })
  | (Named & {
      readonly kind: 'flown-after-handing-in' | 'flown-long-before';
      readonly flight: number;
      readonly date: CalendarDate;
      readonly handedIn: CalendarDate;
    })
  | (Named & {
      readonly kind: 'handed-in-late';
      readonly flights: readonly number[];
      readonly handedIn: CalendarDate;
      /** The last day to hand in. */
      readonly reportBy: CalendarDate;
    });

export type ConcernOf<Kind extends Concern['kind']> = Extract<Concern, { readonly kind: Kind }>;
