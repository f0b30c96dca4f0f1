import { type ChartNames, chartAxes, chartSvg, chartWord } from './chart-parts.ts';
import { drawLevel } from './draw-level.ts';
import { bestRing, markPath } from './flight-marks.ts';
import type { FlightsLayout } from './flights-chart.ts';

/**
 * The flights of an aircraft as SVG text. Beside the classes of every chart: `chart-flight` with the kind of its mark,
 * `chart-best` for the ring around the best, `chart-bar` for ±, `chart-change` where the aircraft was changed, `chart-day`
 * for what holds the flights of a day together.
 */
export function drawFlightsChart(layout: FlightsLayout, names: ChartNames): string {
  const { up, marks, bars, numbers, days, setups, levels, best, label, top, bottom } = layout;
  return chartSvg(layout, names, [
    ...chartAxes(layout, up, { ticks: [], label }),
    ...levels.map((level) => drawLevel(level, layout)),
    ...setups.map(({ x }) => `<path class="chart-change" d="M${x} ${top}V${bottom}"/>`),
    ...numbers.map(({ x, text, best: ofBest }) =>
      ofBest
        ? `<g class="chart-strong">${chartWord(text, x, bottom + 20, 'middle')}</g>`
        : chartWord(text, x, bottom + 20, 'middle'),
    ),
    ...days.flatMap(({ from, to, name }) => [
      `<path class="chart-day" d="M${from} ${bottom + 28}v4H${to}v-4"/>`,
      ...(name === null ? [] : [chartWord(name.text, name.x, bottom + 50, 'middle')]),
    ]),
    // No line runs through words, and no words hide a flight.
    ...[...levels.map(({ name }) => name), ...setups.map(({ name }) => name)].flatMap((name) =>
      name === null ? [] : [chartWord(name.text, name.at.x, name.at.y, name.anchor)],
    ),
    ...bars.map(({ x, top: high, bottom: low }) => `<path class="chart-bar" d="M${x} ${high}V${low}"/>`),
    ...marks.map(({ x, y, kind, best: first }) => markPath(kind, x, y) + (first ? bestRing(x, y) : '')),
    ...(best === null
      ? []
      : [`<g class="chart-strong">${chartWord(best.text, best.at.x, best.at.y, best.anchor)}</g>`]),
  ]);
}
