import type { PresentFigure } from '../figures/figure.ts';
import { figureAt, type InBoth, placesOf } from './measure.ts';

/**
 * A column of figures as text, without their ±, with one number of decimals as far as that is honest: that of the
 * least certain figure, though at most one fewer than half of them hold. What holds fewer still keeps its own. Null
 * where a line has no figure; the figures of several motors stand side by side.
 */
export function columnTexts(
  lines: readonly (readonly PresentFigure[])[],
  system: 'metric' | 'imperial',
): (string | null)[] {
  const held = lines
    .flat()
    .map((figure) => placesOf(figure, system))
    .sort((a, b) => a - b);
  const places = Math.max(held[0] ?? 0, (held[held.length >> 1] ?? 0) - 1);
  return lines.map((figures) =>
    figures.length === 0
      ? null
      : [...new Set(figures.map((figure) => figureAt(figure, system, places)))].join(' / '),
  );
}

/** The same in both systems. */
export function columnInBoth(lines: readonly (readonly PresentFigure[])[]): (InBoth | null)[] {
  const imperial = columnTexts(lines, 'imperial');
  return columnTexts(lines, 'metric').map((metric, index) =>
    metric === null ? null : { metric, imperial: imperial[index] ?? metric },
  );
}
