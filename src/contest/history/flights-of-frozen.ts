import type { Moment } from '../../model/calendar.ts';
import type { Challenge } from '../../model/challenge.ts';
import { parseMoment } from '../../timing/calendar.ts';
import type { FrozenResult } from '../frozen/frozen.ts';
import { targetWhenFrozen } from '../frozen/target-when-frozen.ts';
import { reaches } from '../verdicts/judge-flights.ts';
import type { AcceptedFlight } from './accepted-flight.ts';
import { inOrderFlown } from './order-flown.ts';

/**
 * The accepted flights of a final result, in the order flown, all from the frozen result: also of entries that are gone
 * or written otherwise by now. Of the flights as they are today only the uncertainty of a span is taken, and only where
 * the span is still the one that was frozen.
 */
export function flightsOfFrozen(
  challenge: Challenge,
  frozen: FrozenResult,
  today: readonly AcceptedFlight[],
): readonly AcceptedFlight[] {
  const target = targetWhenFrozen(challenge, frozen);
  const unplaced = new Set(frozen.unplaced.map(({ entry }) => entry));
  const known = new Map(today.map((flight) => [keyOf(flight.entry, flight.number), flight]));
  return inOrderFlown(
    frozen.entries
      .filter(({ id }) => !unplaced.has(id))
      .flatMap(({ id, builders, flights }) =>
        flights
          .filter(({ status }) => status === 'accepted')
          .map((flight) => {
            const span = flight.span ?? spanOfRecord(frozen, id, flight.number);
            const now = known.get(keyOf(id, flight.number))?.span ?? null;
            return {
              entry: id,
              number: flight.number,
              builders,
              flown: momentOf(flight),
              seconds: flight.official,
              span: span === null ? null : { value: span, u: now?.value === span ? now.u : null },
              reachedTarget: reaches({ target }, flight.official),
            };
          }),
      ),
  );
}

/** When it was flown; the date only where the result does not tell the time of day. */
function momentOf({ date, flown }: { readonly date: string; readonly flown?: string | undefined }): Moment {
  const parsed = parseMoment(flown ?? date);
  if (parsed.ok && parsed.value.date === date) return parsed.value;
  return { date, time: null, offset: null, written: date };
}

/** The span a record was given for: all that results without the spans of their flights know. */
function spanOfRecord({ records }: FrozenResult, entry: string, flight: number): number | null {
  const held = records.find((one) => one.kind === 'span' && one.entry === entry && one.flight === flight);
  return held?.value ?? null;
}

function keyOf(entry: string, flight: number): string {
  return `${entry}/${flight}`;
}
