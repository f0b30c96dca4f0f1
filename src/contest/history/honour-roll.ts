import type { AcceptedFlight } from './accepted-flight.ts';
import { progressOfTime } from './progress.ts';

/** An aircraft that reached the target. */
export interface Honour {
  readonly entry: string;
  /** Its first flight that did. */
  readonly first: AcceptedFlight;
  readonly best: AcceptedFlight;
  /** How many of its flights did. */
  readonly times: number;
}

/** Everyone who reached the target, in the order of first reaching it. */
export function honourRoll(inOrder: readonly AcceptedFlight[]): readonly Honour[] {
  const reached = Map.groupBy(
    inOrder.filter(({ reachedTarget }) => reachedTarget),
    ({ entry }) => entry,
  );
  return [...reached].map(([entry, flights]) => ({
    entry,
    first: flights[0]!,
    best: progressOfTime(flights).at(-1)!.flight,
    times: flights.length,
  }));
}
