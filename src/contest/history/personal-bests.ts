import type { AcceptedFlight } from './accepted-flight.ts';
import { progressOfTime } from './progress.ts';

/** What one builder reached in a challenge, with all aircraft taken together. */
export interface PersonalBest {
  readonly builder: string;
  readonly best: AcceptedFlight;
  /** The first accepted flight, to tell how far the builder came. */
  readonly first: AcceptedFlight;
  /** How often the builder beat the own best. */
  readonly improvements: number;
  /** Accepted flights. */
  readonly flights: number;
}

/** The best of each builder, the longest first; of equal ones the earlier. A team's flight counts for each of the team. */
export function personalBests(inOrder: readonly AcceptedFlight[]): readonly PersonalBest[] {
  const position = new Map(inOrder.map((flight, index) => [flight, index]));
  const flown = new Map<string, AcceptedFlight[]>();
  for (const flight of inOrder)
    for (const builder of new Set(flight.builders))
      flown.set(builder, [...(flown.get(builder) ?? []), flight]);
  return [...flown]
    .map(([builder, flights]) => {
      const steps = progressOfTime(flights);
      return {
        builder,
        best: steps.at(-1)!.flight,
        first: flights[0]!,
        improvements: steps.length - 1,
        flights: flights.length,
      };
    })
    .sort(
      (a, b) =>
        b.best.seconds - a.best.seconds ||
        position.get(a.best)! - position.get(b.best)! ||
        (a.builder < b.builder ? -1 : 1),
    );
}
