import type { FlightRuling } from '../../../model/ruling.ts';
import type { ConcernOf } from '../concern.ts';
import type { EntryPair } from '../entry-pairs.ts';
import type { ReviewedEntry } from '../review.ts';
import { rulingsOn } from '../side.ts';

type WrittenRulings = ConcernOf<'rulings-written'>;

/**
 * What the rulings of a change say: each that is new, other than before, or taken out, with whether its flight changes in the
 * same go. A ruling is the organiser's word, so that who gives it in whose name is for a person to see.
 */
export function writtenRulings(
  pairs: readonly EntryPair[],
  entries: readonly ReviewedEntry[],
): readonly WrittenRulings[] {
  const reviewed = new Map(entries.map((one) => [`${one.challenge}/${one.entry}`, one]));
  return pairs.flatMap((pair) => {
    const { challenge, entry } = pair;
    const [was, is] = [rulingsOn(pair.before), rulingsOn(pair.after)];
    const flights = reviewed.get(`${challenge}/${entry}`)?.flights ?? [];
    const name = (pair.after ?? pair.before)?.record.entry.name ?? entry;
    const each = [...new Set([...was.keys(), ...is.keys()])]
      .sort((a, b) => a - b)
      .flatMap((number): WrittenRulings[] => {
        const [before, after] = [told(was.get(number)), told(is.get(number))];
        if (JSON.stringify(before) === JSON.stringify(after)) return [];
        const change = flights.find((one) => one.number === number)?.change;
        const flightChanges = change === 'added' || change === 'changed' || change === 'renumbered';
        return [
          {
            kind: 'rulings-written',
            challenge,
            entry,
            name,
            flights: [number],
            before,
            after,
            flightChanges,
          },
        ];
      });
    return together(each);
  });
}

/** What the same hand says alike of several flights is told once. */
function together(each: readonly WrittenRulings[]): readonly WrittenRulings[] {
  const alike = Map.groupBy(each, ({ flights: _, ...rest }) => JSON.stringify(rest));
  return [...alike.values()].flatMap((same) => {
    const [first] = same;
    return first === undefined ? [] : [{ ...first, flights: same.flatMap(({ flights }) => flights) }];
  });
}

/** What a ruling says, without what the command works out from the flight. */
function told(ruling: FlightRuling | undefined): WrittenRulings['after'] {
  if (ruling === undefined) return null;
  const { verdict, by, second, date, received, time, reason, seen } = ruling;
  return { verdict, by, second, date, received, time, reason, seen };
}
