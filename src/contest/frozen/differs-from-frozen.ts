import type { ContestResult } from '../standing.ts';
import type { FrozenResult } from './frozen.ts';

/**
 * Where a result worked out now is not the frozen one, a phrase for each entry or flight, in the order of the frozen
 * table: for people who want to know what a changed rule, entry or default would have done. The frozen one stands.
 */
export function differsFromFrozen(
  computed: Pick<ContestResult, 'standings' | 'entries'>,
  frozen: FrozenResult,
): readonly string[] {
  const now = new Map(computed.standings.map((standing) => [standing.entry, standing]));
  const then = new Map(frozen.standings.map((standing) => [standing.entry, standing]));
  const places = frozen.standings.flatMap(({ entry, place, score }) => {
    const found = now.get(entry);
    if (found === undefined) return [`${entry} ${place} with ${score} s, now without a place`];
    if (found.place === place && found.score === score) return [];
    return [`${entry} ${place} with ${score} s, now ${found.place} with ${found.score} s`];
  });
  const newcomers = computed.standings.flatMap(({ entry, place, score }) =>
    then.has(entry) ? [] : [`${entry} without a place, now ${place} with ${score} s`],
  );
  return [...places, ...newcomers, ...frozen.entries.flatMap((entry) => flightsThatDiffer(computed, entry))];
}

function flightsThatDiffer(
  computed: Pick<ContestResult, 'entries'>,
  { id, flights }: FrozenResult['entries'][number],
): string[] {
  const judged = computed.entries.get(id)?.flights;
  if (judged === undefined)
    return [`${id} with ${flights.length === 1 ? 'one flight' : `${flights.length} flights`}, now not read`];
  return flights.flatMap(({ number, official, status }) => {
    const found = judged.find((flight) => flight.number === number);
    if (found === undefined) return [`flight ${number} of ${id} ${official} s and ${status}, now not told`];
    if (found.official.seconds === official && found.status === status) return [];
    return [
      `flight ${number} of ${id} ${official} s and ${status}, now ${found.official.seconds} s and ${found.status}`,
    ];
  });
}
