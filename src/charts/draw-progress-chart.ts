import { type ChartNames, chartAxes, chartSvg, chartWord } from './chart-parts.ts';
import { drawLevel } from './draw-level.ts';
import type { ProgressLayout } from './progress-chart.ts';

/**
 * A progress chart as SVG text. Beside the classes of every chart: `chart-level target` and `milestone` for the times
 * with a name, `chart-other` for flights that did not beat the best.
 */
export function drawProgressChart(layout: ProgressLayout, names: ChartNames): string {
  const { up, across, marks, others, stairs, steps, best } = layout;
  const [first, ...rest] = stairs;
  return chartSvg(layout, names, [
    ...chartAxes(layout, up, across),
    ...marks.map((mark) => drawLevel(mark, layout)),
    ...others.map(({ x, y }) => `<circle class="chart-other" cx="${x}" cy="${y}" r="2.5"/>`),
    ...(first === undefined || rest.length === 0
      ? []
      : [
          `<path class="chart-line out" d="M${first.x} ${first.y}L${rest.map(({ x, y }) => `${x} ${y}`).join(' ')}"/>`,
        ]),
    ...steps.map(({ x, y }) => `<circle class="chart-dot" cx="${x}" cy="${y}" r="4"/>`),
    // Words come last, so that no line runs through them.
    ...[...marks.map(({ name }) => name), best].flatMap((name) =>
      name === null ? [] : [chartWord(name.text, name.at.x, name.at.y, name.anchor)],
    ),
  ]);
}
