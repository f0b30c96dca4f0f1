import { type ChartNames, chartSvg, chartWord, tenth } from './chart-parts.ts';
import { bestRing, markPath } from './flight-marks.ts';
import type { StripLayout } from './strip-chart.ts';

/** Values beside a band as SVG text: `chart-band` is what was to be expected, `chart-middle` its middle. */
export function drawStripChart(layout: StripLayout, names: ChartNames): string {
  const { scale, label, marks, bars, band, middle, left, right, top, bottom, height } = layout;
  const said = [band?.name ?? null, middle?.name ?? null];
  return chartSvg(layout, names, [
    ...(band === null
      ? []
      : [
          `<path class="chart-band" d="M${band.left} ${top}H${band.right}V${bottom}H${band.left}z"/>`,
          `<path class="chart-edge" d="M${band.left} ${top}V${bottom}M${band.right} ${top}V${bottom}"/>`,
        ]),
    ...(middle === null ? [] : [`<path class="chart-middle" d="M${middle.x} ${top}V${bottom}"/>`]),
    `<path class="chart-axis" d="M${left} ${bottom}H${right}"/>`,
    ...scale.ticks.map(({ value, text }) => {
      const x = tenth(scale.at(value));
      return `<path class="chart-axis" d="M${x} ${bottom}v6"/>${chartWord(text, x, bottom + 22, 'middle')}`;
    }),
    chartWord(label, right, height - 8, 'end'),
    ...bars.map(({ y, from, to }) => `<path class="chart-bar" d="M${from} ${y}H${to}"/>`),
    ...marks.map(({ x, y, kind, best }) => markPath(kind, x, y) + (best ? bestRing(x, y) : '')),
    ...said.flatMap((name) =>
      name === null ? [] : [chartWord(name.text, name.at.x, name.at.y, name.anchor)],
    ),
  ]);
}
