import type { FlightRuling } from '../model/ruling.ts';

/** Rulings that read as one line: at least one, of flights that follow each other in the list. */
export type RulingRun = readonly [FlightRuling, ...FlightRuling[]];

/** Fewer are told one by one: a row for two saves nothing. */
const leastRun = 3;

/**
 * The rulings of an aircraft in their order, acceptances in which nothing but the flight and the day differs put
 * together: a season of forty accepted flights reads as a line, and what needed a decision stands out.
 */
export function rulingRuns(
  rulings: readonly FlightRuling[],
  /** Whether a ruling is an acceptance about which there is nothing else to say. */
  plain: (ruling: FlightRuling) => boolean,
): RulingRun[] {
  const runs: [FlightRuling, ...FlightRuling[]][] = [];
  for (const ruling of rulings) {
    const run = runs.at(-1);
    if (run !== undefined && plain(ruling) && plain(run[0]) && alike(run[0], ruling)) run.push(ruling);
    else runs.push([ruling]);
  }
  return runs.flatMap((run): RulingRun[] => (run.length < leastRun ? run.map((one) => [one]) : [run]));
}

function alike(one: FlightRuling, other: FlightRuling): boolean {
  return one.by === other.by && one.seen.join() === other.seen.join();
}
