import type { ChosenPlot, PlotRow } from '../../client/plot/chosen-plot.ts';
import { words } from '../../words.ts';

/** What one sees in a plot, in a sentence: who stands at the ends and who highest. Empty without an aircraft. */
export function toldPlot({ rows, plot }: Pick<ChosenPlot, 'rows' | 'plot'>): string {
  const [low, high] = [rows[0], rows.at(-1)];
  if (low === undefined || high === undefined) return '';
  let top = 0;
  for (const [place, { y }] of plot.points.entries()) if (y > plot.points[top]!.y) top = place;
  return words.plot.fixed.seen(rows.length, told(rows[top]!), told(low), told(high));
}

function told({ entry, plainX, plainY }: PlotRow): { name: string; x: string; y: string } {
  return { name: entry.name, x: plainX, y: plainY };
}
