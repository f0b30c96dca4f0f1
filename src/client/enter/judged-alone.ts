import type { Contender } from '../../contest/contender.ts';
import { headlineOf } from '../../contest/ranking/headline.ts';
import { isJunior } from '../../contest/rules/junior-team.ts';
import { judgeFlights } from '../../contest/verdicts/judge-flights.ts';
import type { EntryWithFigures, FlightWithFigures } from '../../entries/check-judged/with-figures.ts';
import { figuresOfEntry } from '../../figures/figures-of-entry.ts';
import type { Batch } from '../../model/batch.ts';
import type { Challenge } from '../../model/challenge.ts';
import type { Entry } from '../../model/entry.ts';
import { handWatch } from '../../timing/hand-watch.ts';

/**
 * An entry with its figures, and its flights judged by the rules alone: as a file that nobody has ruled on yet. Bench logs
 * and photos are files of their own: nothing rests on them here. Without rules no flight is judged.
 */
export function judgedAlone(
  entry: Entry,
  rules: Challenge | null,
  batches: readonly Batch[],
): EntryWithFigures {
  const figures = figuresOfEntry(
    entry,
    [],
    new Map(batches.map((batch) => [batch.id, batch])),
    { thrust: new Map(), torque: new Map() },
    rules?.timing.uncertainty.watch ?? handWatch,
  );
  const contender: Contender = {
    entry,
    ruling: null,
    junior: isJunior(entry),
    seals: new Map(),
    modelFigures: figures.model,
    figuresAtFlight: figures.atFlight,
  };
  const judged = rules === null ? [] : judgeFlights(rules, contender).flights;
  const flights = entry.flights.flatMap((flight): FlightWithFigures[] => {
    const verdict = judged.find(({ number }) => number === flight.number);
    if (verdict === undefined) return [];
    return [
      {
        flight,
        judged: verdict,
        get figures() {
          return figures.flight({ flight, official: verdict.official }, verdict.setup);
        },
      },
    ];
  });
  return {
    entry,
    judged: headlineOf(entry, judged),
    setupFigures: entry.setups.map(({ id }) => figures.model(id)),
    flights,
    photos: [],
  };
}
