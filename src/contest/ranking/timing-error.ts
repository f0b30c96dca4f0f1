import type { Standing } from '../standing.ts';

/** What floating point may add to a difference that is just at the bound. */
const slack = 1e-9;

/**
 * For each row of a table, the best score first, the entries whose score differs from its own by no more than
 * 2√(u₁² + u₂²): the watches cannot tell them apart. They come in the order of the table. Scores made of maxima only
 * have no uncertainty, and two of them that are equal are not listed.
 */
export function withinTimingError(
  table: readonly Pick<Standing, 'entry' | 'score' | 'u'>[],
): readonly (readonly string[])[] {
  const largestU = table.reduce((largest, { u }) => Math.max(largest, u), 0);
  const near: string[][] = table.map(() => []);
  table.forEach((one, index) => {
    const reach = 2 * Math.hypot(one.u, largestU);
    for (let below = index + 1; below < table.length; below++) {
      const other = table[below]!;
      const difference = one.score - other.score;
      if (difference > reach + slack) break;
      const bound = 2 * Math.hypot(one.u, other.u);
      if (bound === 0 || difference > bound + slack) continue;
      near[index]?.push(other.entry);
      near[below]?.push(one.entry);
    }
  });
  return near;
}
