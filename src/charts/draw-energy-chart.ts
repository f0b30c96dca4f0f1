import type { EnergyItem } from '../figures/energy-account.ts';
import { type ChartNames, chartSvg, chartWord } from './chart-parts.ts';
import type { EnergyLayout, PlacedBar } from './energy-chart.ts';
import { hatching } from './hatching.ts';

/** What stands above a bar. */
export interface BarWords {
  readonly name: string;
  readonly metric: string;
  readonly imperial: string;
}

/**
 * Where the energy went as SVG text. Bars have the class `chart-energy` with their kind; what is assumed is hatched, so that
 * it is told apart without colour.
 */
export function drawEnergyChart(
  layout: EnergyLayout,
  names: ChartNames,
  say: (item: EnergyItem) => BarWords,
): string {
  const { bars, there, barHeight } = layout;
  const hatch = `${names.id}-hatch`;
  return chartSvg(layout, names, [
    hatching(hatch),
    ...bars.map((bar) => drawBar(bar, layout, hatch)),
    ...bars.map(({ top }) => `<path class="chart-there" d="M${there} ${top - 3}v${barHeight + 6}"/>`),
    ...bars.map((bar) => drawWords(bar, layout, say(bar.item))),
  ]);
}

function drawBar(
  { kind, left, width, top, whisker }: PlacedBar,
  layout: EnergyLayout,
  hatch: string,
): string {
  const { barHeight } = layout;
  const box = `x="${left}" y="${top}" width="${width}" height="${barHeight}"`;
  // Not by a style: a page may forbid those.
  const fill = kind === 'assumed' || kind === 'beyond' ? `fill="url(#${hatch})"` : '';
  const middle = top + barHeight / 2;
  const bar = `<rect class="chart-energy of-${kind}" ${box} ${fill}/>`;
  return whisker === null
    ? bar
    : `${bar}<path class="chart-whisker" d="M${whisker.from} ${middle - 4}v8m0 -4H${whisker.to}m0 -4v8"/>`;
}

function drawWords({ top, kind }: PlacedBar, { left, right }: EnergyLayout, words: BarWords): string {
  const y = top - 6;
  const value =
    words.metric === words.imperial
      ? chartWord(words.metric, right, y, 'end')
      : `<g class="metric">${chartWord(words.metric, right, y, 'end')}</g><g class="imperial">${chartWord(words.imperial, right, y, 'end')}</g>`;
  const both = chartWord(words.name, left, y, 'start') + value;
  return kind === 'used' || kind === 'there' ? `<g class="chart-strong">${both}</g>` : both;
}
