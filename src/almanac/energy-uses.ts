import type { ContestResult } from '../contest/standing.ts';
import { isPresent, type PresentFigure } from '../figures/figure.ts';
import type { EntryRecord } from './almanac.ts';

/**
 * What share of the energy turned into time in the air, of every placed model whose figures tell it, the lowest first:
 * what was reached on a board is the measure of what a prediction takes for granted.
 */
export function energyUsesOf(
  { standings }: ContestResult,
  entries: readonly EntryRecord[],
): readonly PresentFigure[] {
  const placed = new Set(standings.map(({ entry }) => entry));
  return entries
    .flatMap(({ entry, figures }) => (placed.has(entry.id) ? [figures.entry.get('energy-use')] : []))
    .filter(isPresent)
    .sort((a, b) => a.value - b.value);
}
