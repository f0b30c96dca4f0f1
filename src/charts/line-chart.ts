import { tenth } from './chart-parts.ts';
import { type PlacedName, widthOfName } from './placed-name.ts';
import { linearScale, type Scale, scaleInUnit } from './scale.ts';
import { type Point, thinned } from './thinned.ts';

/** How a line is drawn: whole on the way out, dashed on the way back. */
export type LineKind = 'out' | 'back';

export interface ChartLine {
  /** Stands beside the line; null where there is only one. */
  readonly name: string | null;
  readonly kind: LineKind;
  /** In the order measured, in the units of the axes. */
  readonly points: readonly Point[];
}

export interface ChartAxis {
  readonly label: string;
  readonly start: number;
  /** The largest value to be shown; charts that are to be compared share it. */
  readonly most: number;
}

/** How the axis that goes up reads in the other system of units. */
export interface OtherUnit {
  readonly label: string;
  /** How many of its unit one of the axis is. */
  readonly per: number;
}

/** What a chart says, before anybody knows where it stands on paper. */
export interface LineChart {
  readonly across: ChartAxis;
  readonly up: ChartAxis & {
    /** Null where both systems use one unit. */
    readonly imperial: OtherUnit | null;
  };
  readonly lines: readonly ChartLine[];
  /** A point with a cross and a word, such as a break. */
  readonly mark: { readonly at: Point; readonly name: string } | null;
  /** Part of the axis across that is shaded, such as a run. */
  readonly window: { readonly from: number; readonly to: number } | null;
  /** A height with a name, drawn over the window, such as a mean. */
  readonly level: { readonly at: number; readonly name: string } | null;
  /** Where on the line a flight worked. */
  readonly working: { readonly at: Point; readonly name: string } | null;
}

export interface LineLayout {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly across: { readonly scale: Scale; readonly label: string };
  readonly up: { readonly scale: Scale; readonly label: string };
  /** The axis up in the other system of units. */
  readonly imperial: { readonly scale: Scale; readonly label: string } | null;
  readonly lines: readonly PlacedLine[];
  readonly mark: { readonly at: Point; readonly name: string } | null;
  readonly window: { readonly left: number; readonly right: number } | null;
  readonly level: { readonly from: Point; readonly to: number; readonly name: PlacedName } | null;
  readonly working: { readonly at: Point; readonly name: PlacedName } | null;
}

export interface PlacedLine {
  readonly kind: LineKind;
  readonly points: readonly Point[];
  readonly name: PlacedName | null;
}

const size = { width: 480, height: 320, left: 48, right: 454, top: 34, bottom: 266 };

/** Where everything of a chart stands. A line of one point is a dot, a chart without lines has its axes only. */
export function layOutLineChart(chart: LineChart): LineLayout {
  const { across, up, lines, mark, window, level, working } = chart;
  const x = linearScale(across.start, across.most, size.left, size.right, 6);
  const y = linearScale(up.start, up.most, size.bottom, size.top, 5);
  const place = (point: Point): Point => ({ x: tenth(x.at(point.x)), y: tenth(y.at(point.y)) });
  return {
    ...size,
    across: { scale: x, label: across.label },
    up: { scale: y, label: up.label },
    imperial:
      up.imperial === null ? null : { scale: scaleInUnit(y, up.imperial.per, 5), label: up.imperial.label },
    lines: lines
      .filter(({ points }) => points.length > 0)
      .map(({ name, kind, points }) => {
        const placed = thinned(points.map(place), 1);
        return { kind, points: placed, name: name === null ? null : besideLine(name, kind, placed) };
      }),
    mark: mark === null ? null : { at: place(mark.at), name: mark.name },
    window: window === null ? null : { left: inside(x.at(window.from)), right: inside(x.at(window.to)) },
    level: level === null ? null : placeLevel(level, window ?? { from: x.low, to: x.high }, place),
    working: working === null ? null : placeWorking(place(working.at), working.name),
  };
}

function inside(x: number): number {
  return tenth(Math.min(Math.max(x, size.left), size.right));
}

/** The name of a level stands on its right end, where a line that runs down has left room. */
function placeLevel(
  { at, name }: NonNullable<LineChart['level']>,
  { from, to }: NonNullable<LineChart['window']>,
  place: (point: Point) => Point,
): LineLayout['level'] {
  const start = place({ x: from, y: at });
  const end = place({ x: to, y: at }).x;
  return { from: start, to: end, name: { text: name, at: { x: end, y: start.y - 6 }, anchor: 'end' } };
}

/** These lines rise: below the point on its right there is room, else above it on its left. */
function placeWorking(at: Point, text: string): LineLayout['working'] {
  const right = at.x + 10 + widthOfName(text) <= size.width;
  return {
    at,
    name: right
      ? { text, at: { x: at.x + 10, y: at.y + 20 }, anchor: 'start' }
      : { text, at: { x: at.x - 10, y: at.y - 8 }, anchor: 'end' },
  };
}

/** The way out rises, so its name stands above it on the left; the way back lies below, its name on the right. */
function besideLine(text: string, kind: LineKind, points: readonly Point[]): PlacedLine['name'] {
  const far = points.reduce((most, { x }) => Math.max(most, x), size.left);
  const wanted = size.left + 0.55 * (far - size.left);
  const near = points.reduce((best, point) =>
    Math.abs(point.x - wanted) < Math.abs(best.x - wanted) ? point : best,
  );
  return kind === 'out'
    ? { text, at: { x: near.x - 8, y: near.y - 8 }, anchor: 'end' }
    : { text, at: { x: near.x + 8, y: near.y + 20 }, anchor: 'start' };
}
