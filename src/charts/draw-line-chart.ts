import { type ChartNames, chartAcrossAxis, chartSvg, chartUpAxis, chartWord } from './chart-parts.ts';
import type { LineLayout, PlacedLine } from './line-chart.ts';

/**
 * A chart as SVG text, with title and description. Colours, strokes and fonts come from the classes: `chart-grid`,
 * `chart-axis`, `chart-line out` and `back`, `chart-dot`, `chart-mark`, `chart-band` for a window, `chart-middle` for a
 * level, `chart-working` for the point where a flight worked, and `chart-name` for words. An axis up in two systems of units
 * stands twice, of which styles show one.
 */
export function drawLineChart(layout: LineLayout, names: ChartNames): string {
  const { across, mark, window, level, working, top, bottom } = layout;
  const ticks = across.scale.ticks.map(({ value, text }) => ({ x: across.scale.at(value), text }));
  const parts = [
    ...(window === null
      ? []
      : [`<path class="chart-band" d="M${window.left} ${top}H${window.right}V${bottom}H${window.left}z"/>`]),
    ...upAxes(layout),
    ...chartAcrossAxis(layout, { ticks, label: across.label }),
    ...layout.lines.map(line),
  ];
  if (mark !== null) {
    const { x, y } = mark.at;
    parts.push(`<path class="chart-mark" d="M${x - 6} ${y - 6}l12 12m0 -12l-12 12"/>`);
    parts.push(chartWord(mark.name, x - 12, y + 5, 'end'));
  }
  if (level !== null) {
    const { from, to, name } = level;
    parts.push(`<path class="chart-middle" d="M${from.x} ${from.y}H${to}"/>`);
    parts.push(chartWord(name.text, name.at.x, name.at.y, name.anchor));
  }
  if (working !== null) {
    const { at, name } = working;
    parts.push(`<path class="chart-working" d="M${at.x} ${at.y}V${bottom}"/>`);
    parts.push(`<circle class="chart-best" cx="${at.x}" cy="${at.y}" r="6"/>`);
    parts.push(`<g class="chart-strong">${chartWord(name.text, name.at.x, name.at.y, name.anchor)}</g>`);
  }
  return chartSvg(layout, names, parts);
}

function upAxes(layout: LineLayout): readonly string[] {
  const { up, imperial } = layout;
  const own = chartUpAxis(layout, up);
  if (imperial === null) return own;
  return [
    `<g class="metric">${own.join('')}</g>`,
    `<g class="imperial">${chartUpAxis(layout, imperial).join('')}</g>`,
  ];
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
