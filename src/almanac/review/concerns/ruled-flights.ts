import type { Contender } from '../../../contest/contender.ts';
import { type ChangedAfterRuling, changedAfterRuling } from '../../awaiting/changed-after-ruling.ts';
import { entrantsOf } from '../../entrants.ts';
import { sealFlights } from '../../seal-flights.ts';
import type { ConcernOf } from '../concern.ts';
import type { EntryPair } from '../entry-pairs.ts';
import type { ReviewedEntry } from '../review.ts';
import { challengesOf } from '../reviewed-rules.ts';
import type { Side, Sides } from '../side.ts';

type RuledFlights = ConcernOf<'ruled-flights-changed'>;

/**
 * Flights that were ruled on and are not what they were: fields of the flight itself, or facts and figures that the
 * ruling rests on. A flight that was ruled anew with the change is none of them.
 */
export function ruledFlights(
  sides: Sides,
  pairs: readonly EntryPair[],
  entries: readonly ReviewedEntry[],
): readonly RuledFlights[] {
  const [before, after] = [unfitting(sides.before, pairs), unfitting(sides.after, pairs)];
  const reviewed = new Map(entries.map((one) => [`${one.challenge}/${one.entry}`, one]));
  const each = pairs.flatMap(({ challenge, entry, after: is }) =>
    (is?.record.ruling?.flights ?? []).flatMap((ruling): RuledFlights[] => {
      const key = `${challenge}/${entry} ${ruling.flight}`;
      const one = reviewed.get(`${challenge}/${entry}`);
      const flight = one?.flights.find(({ number }) => number === ruling.flight);
      const written = flight?.change === 'changed' && flight.ruling !== null && !flight.ruledAnew;
      const known = new Set((before.get(key)?.changes ?? []).map(({ what, now }) => `${what} ${now}`));
      const facts = (after.get(key)?.changes ?? []).filter(
        ({ what, now }) => what !== 'seal' && !known.has(`${what} ${now}`),
      );
      if (!written && (facts.length === 0 || flight?.ruledAnew === true)) return [];
      return [
        {
          kind: 'ruled-flights-changed',
          challenge,
          entry,
          name: is?.record.entry.name ?? entry,
          flights: [{ number: ruling.flight, ruledOn: ruling.date }],
          verdict: ruling.verdict,
          values: written ? flight.values : [],
          facts,
        },
      ];
    }),
  );
  return together(each);
}

/** What changed alike for several flights of one aircraft is told once. */
function together(each: readonly RuledFlights[]): readonly RuledFlights[] {
  const alike = Map.groupBy(each, ({ flights: _, ...rest }) => JSON.stringify(rest));
  return [...alike.values()].flatMap((same) => {
    const [first] = same;
    return first === undefined ? [] : [{ ...first, flights: same.flatMap(({ flights }) => flights) }];
  });
}

/** The rulings on these entries that no longer fit, by `<challenge>/<entry> <flight>`. */
function unfitting(side: Side, pairs: readonly EntryPair[]): ReadonlyMap<string, ChangedAfterRuling> {
  const wanted = new Set(pairs.map(({ challenge, entry }) => `${challenge}/${entry}`));
  const entries = side.content.entries.filter(({ value }) => wanted.has(`${value.challenge}/${value.id}`));
  const contenders: readonly Contender[] = entrantsOf({ ...side.content, entries }, sealFlights).map(
    ({ contender }) => contender,
  );
  return new Map(
    [...challengesOf(side)].flatMap(([id, challenge]) =>
      changedAfterRuling(
        challenge,
        contenders.filter(({ entry }) => entry.challenge === id),
      ).map((one) => [`${id}/${one.entry} ${one.flight}`, one] as const),
    ),
  );
}
