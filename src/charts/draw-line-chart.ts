import { type ChartNames, chartAxes, chartSvg, chartWord } from './chart-parts.ts';
import type { LineLayout, PlacedLine } from './line-chart.ts';

/**
 * A chart as SVG text, with title and description. Colours, strokes and fonts come from the classes: `chart-grid`,
 * `chart-axis`, `chart-line out` and `back`, `chart-dot`, `chart-mark`, and `chart-name` for words.
 */
export function drawLineChart(layout: LineLayout, names: ChartNames): string {
  const { across, up, mark } = layout;
  const ticks = across.scale.ticks.map(({ value, text }) => ({ x: across.scale.at(value), text }));
  const parts = [...chartAxes(layout, up, { ticks, label: across.label }), ...layout.lines.map(line)];
  if (mark !== null) {
    const { x, y } = mark.at;
    parts.push(`<path class="chart-mark" d="M${x - 6} ${y - 6}l12 12m0 -12l-12 12"/>`);
    parts.push(chartWord(mark.name, x - 12, y + 5, 'end'));
  }
  return chartSvg(layout, names, parts);
}

function line({ kind, points, name }: PlacedLine): string {
  const [first, ...rest] = points;
  if (first === undefined) return '';
  const drawn =
    rest.length === 0
      ? `<circle class="chart-dot" cx="${first.x}" cy="${first.y}" r="4"/>`
      : `<path class="chart-line ${kind}" d="M${first.x} ${first.y}L${rest.map(({ x, y }) => `${x} ${y}`).join(' ')}"/>`;
  return name === null ? drawn : drawn + chartWord(name.text, name.at.x, name.at.y, name.anchor);
}
