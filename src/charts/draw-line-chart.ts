import { escapedText } from './escaped-text.ts';
import type { LineLayout, PlacedLine } from './line-chart.ts';

/** What a chart is called, for those who cannot see it. */
export interface ChartNames {
  /** Unique on its page. */
  readonly id: string;
  readonly title: string;
  readonly description: string;
}

/**
 * A chart as SVG text, with title and description. Colours, strokes and fonts come from the classes: `chart-grid`,
 * `chart-axis`, `chart-line out` and `back`, `chart-dot`, `chart-mark`, and `chart-name` for words.
 */
export function drawLineChart(layout: LineLayout, { id, title, description }: ChartNames): string {
  const { width, height, left, right, top, bottom, across, up } = layout;
  const parts = [
    `<title id="${id}-title">${escapedText(title)}</title>`,
    `<desc id="${id}-description">${escapedText(description)}</desc>`,
    ...up.scale.ticks.map(({ value, text }) => {
      const y = round(up.scale.at(value));
      return `<path class="chart-grid" d="M${left} ${y}H${right}"/>${word(text, left - 8, y + 5, 'end')}`;
    }),
    ...across.scale.ticks.map(({ value, text }) => {
      const x = round(across.scale.at(value));
      return `<path class="chart-axis" d="M${x} ${bottom}v6"/>${word(text, x, bottom + 22, 'middle')}`;
    }),
    `<path class="chart-axis" d="M${left} ${top}V${bottom}H${right}"/>`,
    word(up.label, 0, 14, 'start'),
    word(across.label, right, height - 8, 'end'),
    ...layout.lines.map(line),
  ];
  if (layout.mark !== null) {
    const { x, y } = layout.mark.at;
    parts.push(`<path class="chart-mark" d="M${x - 6} ${y - 6}l12 12m0 -12l-12 12"/>`);
    parts.push(word(layout.mark.name, x - 12, y + 5, 'end'));
  }
  return `<svg class="chart" viewBox="0 0 ${width} ${height}" role="img" aria-labelledby="${id}-title ${id}-description">${parts.join('')}</svg>`;
}

function line({ kind, points, name }: PlacedLine): string {
  const [first, ...rest] = points;
  if (first === undefined) return '';
  const drawn =
    rest.length === 0
      ? `<circle class="chart-dot" cx="${first.x}" cy="${first.y}" r="4"/>`
      : `<path class="chart-line ${kind}" d="M${first.x} ${first.y}L${rest.map(({ x, y }) => `${x} ${y}`).join(' ')}"/>`;
  return name === null ? drawn : drawn + word(name.text, name.at.x, name.at.y, name.anchor);
}

function word(text: string, x: number, y: number, anchor: 'start' | 'middle' | 'end'): string {
  return `<text class="chart-name" x="${round(x)}" y="${round(y)}" text-anchor="${anchor}">${escapedText(text)}</text>`;
}

function round(value: number): number {
  return Math.round(value * 10) / 10;
}
