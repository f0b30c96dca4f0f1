import type { Scored } from './tie-break.ts';

/** What floating point may add to a difference that is just at the bound. */
const slack = 1e-9;

/**
 * For each entry the others whose score differs from its own by no more than 2√(u₁² + u₂²): the watches cannot tell
 * them apart. Scores made of maxima only have no uncertainty, and two of them that are equal are not listed.
 */
export function withinTimingError(scored: readonly Scored[]): ReadonlyMap<string, readonly string[]> {
  const sorted = [...scored].sort((a, b) => b.score.score - a.score.score);
  const largestU = Math.max(0, ...sorted.map(({ score }) => score.u));
  const near = new Map<string, string[]>(sorted.map(({ entry }) => [entry, []]));
  sorted.forEach((one, index) => {
    const reach = 2 * Math.hypot(one.score.u, largestU);
    for (const other of sorted.slice(index + 1)) {
      const difference = one.score.score - other.score.score;
      if (difference > reach + slack) break;
      const bound = 2 * Math.hypot(one.score.u, other.score.u);
      if (bound === 0 || difference > bound + slack) continue;
      near.get(one.entry)?.push(other.entry);
      near.get(other.entry)?.push(one.entry);
    }
  });
  return near;
}
