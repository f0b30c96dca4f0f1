import { type ChartFrame, tenth } from '../chart-parts.ts';
import { type Box, type PlacedName, widthOfName } from '../placed-name.ts';
import type { Scale } from '../scale.ts';
import type { Point } from '../thinned.ts';
import { frontier } from './frontier.ts';
import { placeLabels } from './place-labels.ts';
import type { Plot, PlotAxis, PlotPoint } from './plot.ts';
import { plotScale } from './plot-scale.ts';

/** One aircraft where it stands in the drawing. */
export interface PlacedPoint extends Point {
  readonly id: string;
  readonly name: string;
  readonly marked: boolean;
  readonly waiting: boolean;
  /** On the frontier. */
  readonly best: boolean;
  /** The ends of the ± in each direction, cut at the frame; null where none is drawn. */
  readonly across: readonly [number, number] | null;
  readonly up: readonly [number, number] | null;
}

export interface PlotLayout extends ChartFrame {
  readonly x: { readonly scale: Scale; readonly label: string };
  readonly y: { readonly scale: Scale; readonly label: string };
  /** In the order given. */
  readonly points: readonly PlacedPoint[];
  readonly names: ReadonlyMap<string, PlacedName>;
  /** The corners of the line that parts what is beaten from what is not; empty where no end of an axis is the better. */
  readonly frontier: readonly Point[];
}

/** Among so many aircraft only those of the frontier are named; the others would be a wood of words. */
const mostNamed = 200;

/** Where everything of a plot stands in a drawing of some size. Without points there are axes only. */
export function layOutPlot(plot: Plot, { width, height }: { width: number; height: number }): PlotLayout {
  const [top, bottom, right] = [30, height - 54, width - 14];
  const y = plotScale(extent(plot, 'y'), plot.y.logarithmic, bottom, top, height / 70);
  const left = Math.ceil(12 + Math.max(16, ...y.ticks.map(({ text }) => widthOfName(text))));
  const x = plotScale(extent(plot, 'x'), plot.x.logarithmic, left, right - 8, (right - left) / 80);
  const best = unbeaten(plot);
  const frame = { width, height, left, right, top, bottom };
  const ids = new Set(best.map(({ id }) => id));
  const points = plot.points.map((point) => placed(point, plot, { x, y }, frame, ids));
  return {
    ...frame,
    x: { scale: x, label: plot.x.label },
    y: { scale: y, label: plot.y.label },
    points,
    names: placeLabels(worthNaming(points), points, insideOf(frame)),
    frontier: stairs(best, plot, x, y),
  };
}

/** The room for marks and names. */
export function insideOf({ left, right, top, bottom, width }: ChartFrame): Box {
  return { left: left + 2, right: Math.max(right, width - 4), top: top - 8, bottom };
}

/** The points on the frontier; none where no end of an axis is the better, and none that waits for a ruling. */
export function unbeaten({ x, y, points }: Plot): readonly PlotPoint[] {
  if (x.better === null || y.better === null) return [];
  return frontier(
    points.filter(({ waiting }) => !waiting),
    x.better,
    y.better,
  );
}

function extent({ points, bars, ...axes }: Plot, axis: 'x' | 'y'): readonly number[] {
  const u = axis === 'x' ? 'ux' : 'uy';
  return points
    .flatMap((point) =>
      bars ? [point[axis] - point[u], point[axis], point[axis] + point[u]] : [point[axis]],
    )
    .filter((value) => !axes[axis].logarithmic || value > 0);
}

function placed(
  point: PlotPoint,
  { bars, x, y }: Plot,
  scales: { readonly x: Scale; readonly y: Scale },
  { left, right, top, bottom }: ChartFrame,
  best: ReadonlySet<string>,
): PlacedPoint {
  const ends = (value: number, u: number, scale: Scale, axis: PlotAxis, low: number, high: number) => {
    const at = (end: number) =>
      axis.logarithmic && end <= 0 ? scale.at(scale.low) : Math.min(high, Math.max(low, scale.at(end)));
    return [tenth(at(value - u)), tenth(at(value + u))] as const;
  };
  return {
    id: point.id,
    name: point.name,
    marked: point.marked,
    waiting: point.waiting,
    best: best.has(point.id),
    x: tenth(scales.x.at(point.x)),
    y: tenth(scales.y.at(point.y)),
    across: bars && point.ux > 0 ? ends(point.x, point.ux, scales.x, x, left, right) : null,
    up: bars && point.uy > 0 ? ends(point.y, point.uy, scales.y, y, top, bottom) : null,
  };
}

/** The frontier's names first, then those of the division told apart. */
function worthNaming(points: readonly PlacedPoint[]): readonly PlacedPoint[] {
  const rank = ({ best, marked }: PlacedPoint) => (best ? 0 : marked ? 1 : 2);
  const wanted = points.length > mostNamed ? points.filter(({ best }) => best) : points;
  return wanted.toSorted((a, b) => rank(a) - rank(b));
}

/** Level, then upright, from each to the next: whatever lies behind the corner between two of them is beaten by one. */
function stairs(best: readonly PlotPoint[], plot: Plot, x: Scale, y: Scale): readonly Point[] {
  const at = (across: number, up: number): Point => ({ x: tenth(x.at(across)), y: tenth(y.at(up)) });
  if (best.length === 0 || plot.x.better === null) return [];
  return best.flatMap((point, index) => {
    const before = best[index - 1];
    const here = at(point.x, point.y);
    return before === undefined ? [here] : [at(point.x, before.y), here];
  });
}
