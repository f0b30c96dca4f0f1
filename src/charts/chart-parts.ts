import { escapedText } from './escaped-text.ts';
import type { Scale } from './scale.ts';

/** What a chart is called, for those who cannot see it. */
export interface ChartNames {
  /** Unique on its page. */
  readonly id: string;
  readonly title: string;
  readonly description: string;
}

/** Where the axes of a chart stand. */
export interface ChartFrame {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** A whole chart as SVG text, with title and description. */
export function chartSvg(
  { width, height }: ChartFrame,
  { id, title, description }: ChartNames,
  parts: readonly string[],
): string {
  const names = `<title id="${id}-title">${escapedText(title)}</title><desc id="${id}-description">${escapedText(description)}</desc>`;
  return `<svg class="chart" viewBox="0 0 ${width} ${height}" role="img" aria-labelledby="${id}-title ${id}-description">${names}${parts.join('')}</svg>`;
}

/** The axis that goes up: its label, and a line across for each of its ticks. */
export function chartUpAxis(
  { left, right }: ChartFrame,
  { scale, label }: { readonly scale: Scale; readonly label: string },
): readonly string[] {
  return [
    ...scale.ticks.map(({ value, text }) => {
      const y = tenth(scale.at(value));
      return `<path class="chart-grid" d="M${left} ${y}H${right}"/>${chartWord(text, left - 8, y + 5, 'end')}`;
    }),
    chartWord(label, 0, 14, 'start'),
  ];
}

/** Both axes with their labels, and a line across for each tick of the one that goes up. */
export function chartAxes(
  frame: ChartFrame,
  up: { readonly scale: Scale; readonly label: string },
  across: {
    readonly ticks: readonly { readonly x: number; readonly text: string }[];
    readonly label: string;
  },
): readonly string[] {
  return [...chartUpAxis(frame, up), ...chartAcrossAxis(frame, across)];
}

/** The axis that goes across, with the upright line where both meet. */
export function chartAcrossAxis(
  { height, left, right, top, bottom }: ChartFrame,
  {
    ticks,
    label,
  }: {
    readonly ticks: readonly { readonly x: number; readonly text: string }[];
    readonly label: string;
  },
): readonly string[] {
  return [
    ...ticks.map(
      ({ x, text }) =>
        `<path class="chart-axis" d="M${tenth(x)} ${bottom}v6"/>${chartWord(text, x, bottom + 22, 'middle')}`,
    ),
    `<path class="chart-axis" d="M${left} ${top}V${bottom}H${right}"/>`,
    chartWord(label, right, height - 8, 'end'),
  ];
}

/** A word or a number in a chart. */
export function chartWord(text: string, x: number, y: number, anchor: 'start' | 'middle' | 'end'): string {
  return `<text class="chart-name" x="${tenth(x)}" y="${tenth(y)}" text-anchor="${anchor}">${escapedText(text)}</text>`;
}

/** A tenth of a unit of the drawing is finer than any screen shows it. */
export function tenth(value: number): number {
  return Math.round(value * 10) / 10;
}
