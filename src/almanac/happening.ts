import type { AcceptedFlight } from '../contest/history/accepted-flight.ts';
import type { CalendarDate } from '../model/calendar.ts';
import type { Amendment } from '../model/challenge.ts';
import type { NewsPost } from '../model/site.ts';
import type { ChallengeRecord } from './almanac.ts';

/** What a flight did beyond being accepted, told once it was. */
export type FlightHappening = 'best-time' | 'target-reached';

interface Dated {
  /**
   * A name that stays, whatever becomes of titles and times: the kind, then the first names of challenge, entry or post.
   * Unique within a site.
   */
  readonly id: string;
  readonly date: CalendarDate;
}

/** One dated thing that readers may want to hear of. */
export type Happening = Dated &
  (
    | { readonly kind: 'entered'; readonly record: ChallengeRecord; readonly entry: string }
    | { readonly kind: FlightHappening; readonly record: ChallengeRecord; readonly flight: AcceptedFlight }
    | {
        readonly kind: 'accepted';
        readonly record: ChallengeRecord;
        readonly entry: string;
        /** All that were accepted that day, the last flown first; never empty. */
        readonly flights: readonly AcceptedFlight[];
      }
    | { readonly kind: 'amended'; readonly record: ChallengeRecord; readonly amendment: Amendment }
    | { readonly kind: 'frozen'; readonly record: ChallengeRecord }
    | { readonly kind: 'news'; readonly post: NewsPost; readonly html: string }
  );
