import { type ChartNames, chartAcrossAxis, chartSvg, chartUpAxis } from './chart-parts.ts';
import { markPath } from './flight-marks.ts';
import type { ThrowsLayout } from './throws-chart.ts';

/** The glide ratio of throws as SVG text; an axis across in two systems of units stands twice, of which styles show one. */
export function drawThrowsChart(layout: ThrowsLayout, names: ChartNames): string {
  const { up, across, imperial, marks, bars } = layout;
  const axis = chartAcrossAxis(layout, across).join('');
  return chartSvg(layout, names, [
    ...chartUpAxis(layout, up),
    imperial === null
      ? axis
      : `<g class="metric">${axis}</g><g class="imperial">${chartAcrossAxis(layout, imperial).join('')}</g>`,
    ...bars.map(({ x, top, bottom }) => `<path class="chart-bar" d="M${x} ${top}V${bottom}"/>`),
    ...marks.map(({ x, y, kind }) => markPath(kind, x, y)),
  ]);
}
