import type { Contender } from '../../contest/contender.ts';
import type { Stale } from '../../contest/standing.ts';
import { staleOf } from '../../contest/verdicts/ruling-fits.ts';
import type { CalendarDate } from '../../model/calendar.ts';
import type { Challenge } from '../../model/challenge.ts';
import type { Verdict } from '../../model/ruling.ts';

/** A ruling, of any verdict, that no longer fits what is written now. */
export interface ChangedAfterRuling {
  readonly entry: string;
  readonly flight: number;
  readonly verdict: Verdict;
  readonly ruledOn: CalendarDate;
  readonly received: CalendarDate | null;
  readonly changes: readonly Stale[];
}

/**
 * Every ruling whose flight or aircraft changed after it. A refusal stands whatever became of the flight since, so that
 * nobody can edit it away; but whoever refused it should hear of it.
 */
export function changedAfterRuling(
  challenge: Challenge,
  contenders: readonly Contender[],
): readonly ChangedAfterRuling[] {
  return contenders.flatMap((contender) =>
    (contender.ruling?.flights ?? []).flatMap((ruling) => {
      const flight = contender.entry.flights.find(({ number }) => number === ruling.flight);
      if (flight === undefined) return [];
      const changes = staleOf(challenge, contender, flight, ruling);
      if (changes.length === 0) return [];
      const { verdict, date: ruledOn, received } = ruling;
      return [{ entry: contender.entry.id, flight: flight.number, verdict, ruledOn, received, changes }];
    }),
  );
}
