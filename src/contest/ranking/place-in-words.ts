import type { Challenge } from '../../model/challenge.ts';
import type { Entry } from '../../model/entry.ts';
import type { ContestResult, Standing } from '../standing.ts';
import { listed } from './listed.ts';
import { type FlightOfScore, scoreInWords, scoreText } from './score-in-words.ts';
import { tieBreakName } from './tie-break-name.ts';

/** What a place is explained from, beside the table itself. */
export interface PlaceSources {
  readonly challenge: Challenge;
  readonly result: Pick<ContestResult, 'entries'>;
  /** The entry of that id as it is written now; undefined where there is none any more. */
  readonly entry: (id: string) => Pick<Entry, 'name' | 'flights'> | undefined;
  /** The name of any entry of the table, also of one that is not there any more. */
  readonly name: (id: string) => string;
}

/**
 * One line that lets anybody check a place: how the score came about, and what parted it from neighbours of the same
 * score, such as "41.7 s: flight 3, mean of 41.62 s and 41.80 s, rounded down to 0.1 s; ahead of Bittern by next-best
 * flight". `table` is the table the row stands in, the whole one or that of a division.
 */
export function placeInWords(sources: PlaceSources, table: readonly Standing[], row: Standing): string {
  const { challenge } = sources;
  const score = `${scoreText(challenge, row.score)}: ${scoreInWords(challenge, flightsOf(sources, row))}`;
  const waits = row.provisional ? ['waits for a ruling'] : [];
  return [score, ...waits, ...neighbours(sources, table, row)].join('; ');
}

function flightsOf({ result, entry }: PlaceSources, { entry: id, flights }: Standing): FlightOfScore[] {
  const judged = result.entries.get(id)?.flights ?? [];
  const written = entry(id)?.flights ?? [];
  return flights.flatMap((number) => {
    const flight = judged.find((one) => one.number === number);
    if (flight === undefined) return [];
    return [{ flight, round: written.find((one) => one.number === number)?.round ?? null }];
  });
}

/** What decided against the rows of equal score just above and just below; with whom a place is shared. */
function neighbours({ challenge, name }: PlaceSources, table: readonly Standing[], row: Standing): string[] {
  const equal = table.filter(({ score }) => score === row.score);
  const names = (place: number | undefined) =>
    equal
      .filter((other) => other.place === place && other.entry !== row.entry)
      .map(({ entry }) => name(entry));
  const places = [...new Set(equal.map(({ place }) => place))].sort((a, b) => a - b);
  const above = places[places.indexOf(row.place) - 1];
  const below = places[places.indexOf(row.place) + 1];
  // A row names the step that parted it from above, where anything did.
  const stepTo = (place: number | undefined) =>
    equal.find((other) => other.place === place)?.tieBreak ?? null;
  const shared = names(row.place);
  const told = [
    shared.length === 0 ? null : `shares the place with ${listed(shared)}`,
    above === undefined || row.tieBreak === null
      ? null
      : `behind ${listed(names(above))} by ${tieBreakName(challenge, row.tieBreak)}`,
  ];
  const step = stepTo(below);
  if (below !== undefined && step !== null)
    told.push(`ahead of ${listed(names(below))} by ${tieBreakName(challenge, step)}`);
  return told.filter((one) => one !== null);
}
