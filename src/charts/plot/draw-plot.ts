import { type ChartNames, chartAxes, chartSvg, tenth } from '../chart-parts.ts';
import { escapedText } from '../escaped-text.ts';
import type { PlacedName } from '../placed-name.ts';
import { seatInFront } from './place-labels.ts';
import { insideOf, type PlacedPoint, type PlotLayout } from './plot-layout.ts';

/** Among so many aircraft smaller marks are drawn. */
const crowd = 150;

/**
 * A plot as SVG text. Beside the classes of every chart: `plot-bars` for the ±, `plot-frontier`, `plot-dot` with `marked`
 * (a diamond), `waiting` (hollow) and `best`, and `plot-name`. Marks of one kind are one path, so that a thousand of
 * them stay light.
 */
export function drawPlot(layout: PlotLayout, names: ChartNames): string {
  const { x, y, points, frontier } = layout;
  const ticks = x.scale.ticks.map(({ value, text }) => ({ x: x.scale.at(value), text }));
  const bars = points.flatMap(barsOf).join('');
  const size = points.length > crowd ? 3 : 4.5;
  const best = new Set(points.filter((point) => point.best).map(({ id }) => id));
  return chartSvg(layout, names, [
    ...chartAxes(layout, y, { ticks, label: x.label }),
    bars === '' ? '' : `<path class="plot-bars" d="${bars}"/>`,
    frontier.length < 2
      ? ''
      : `<path class="plot-frontier" d="M${frontier.map(({ x, y }) => `${x} ${y}`).join('L')}"/>`,
    ...kinds.map(({ kind, has }) => {
      const shapes = points.filter(has).map((point) => shapeOf(point, point.best ? size + 1 : size));
      return shapes.length === 0 ? '' : `<path class="plot-dot${kind}" d="${shapes.join('')}"/>`;
    }),
    // Words come last, so that no line runs through them.
    ...[...layout.names].map(([id, name]) => word(name, best.has(id) ? 'plot-name best' : 'plot-name')),
  ]);
}

/** The one mark that is pointed at, with its name, to lie over a plot. */
export function drawPointedAt(layout: PlotLayout, id: string): string {
  const point = layout.points.find((one) => one.id === id);
  if (point === undefined) return '';
  return `<circle class="plot-ring" cx="${point.x}" cy="${point.y}" r="9"/>${word(
    seatInFront(point, insideOf(layout)),
    'plot-name here',
  )}`;
}

/** One mark by itself, for a key: `best`, `marked`, `waiting`, or empty for a plain one. */
export function markSvg(kind: '' | 'best' | 'marked' | 'waiting'): string {
  const shape = shapeOf({ x: 8, y: 8, marked: kind === 'marked' }, 4.5);
  return `<svg class="plot-mark" viewBox="0 0 16 16" aria-hidden="true"><path class="plot-dot ${kind}" d="${shape}"/></svg>`;
}

const kinds: readonly { readonly kind: string; readonly has: (point: PlacedPoint) => boolean }[] = [
  { kind: '', has: ({ marked, waiting, best }) => !marked && !waiting && !best },
  { kind: ' waiting', has: ({ marked, waiting }) => !marked && waiting },
  { kind: ' best', has: ({ marked, best }) => !marked && best },
  { kind: ' marked', has: ({ marked, waiting, best }) => marked && !waiting && !best },
  { kind: ' marked waiting', has: ({ marked, waiting }) => marked && waiting },
  { kind: ' marked best', has: ({ marked, best }) => marked && best },
];

function shapeOf({ x, y, marked }: Pick<PlacedPoint, 'x' | 'y' | 'marked'>, size: number): string {
  const wide = tenth(size * 1.35);
  return marked
    ? `M${tenth(x - wide)} ${y}l${wide} ${-wide}l${wide} ${wide}l${-wide} ${wide}z`
    : `M${tenth(x - size)} ${y}a${size} ${size} 0 1 0 ${2 * size} 0a${size} ${size} 0 1 0 ${-2 * size} 0z`;
}

function barsOf({ x, y, across, up }: PlacedPoint): string[] {
  return [
    ...(across === null ? [] : [`M${across[0]} ${y}H${across[1]}`]),
    ...(up === null ? [] : [`M${x} ${up[0]}V${up[1]}`]),
  ];
}

function word({ text, at, anchor }: PlacedName, kind: string): string {
  return `<text class="chart-name ${kind}" x="${at.x}" y="${at.y}" text-anchor="${anchor}">${escapedText(text)}</text>`;
}
