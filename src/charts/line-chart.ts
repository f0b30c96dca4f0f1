import { tenth } from './chart-parts.ts';
import { linearScale, type Scale } from './scale.ts';
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

/** What a chart says, before anybody knows where it stands on paper. */
export interface LineChart {
  readonly across: ChartAxis;
  readonly up: ChartAxis;
  readonly lines: readonly ChartLine[];
  /** A point with a cross and a word, such as a break. */
  readonly mark: { readonly at: Point; readonly name: string } | null;
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
  readonly lines: readonly PlacedLine[];
  readonly mark: { readonly at: Point; readonly name: string } | null;
}

export interface PlacedLine {
  readonly kind: LineKind;
  readonly points: readonly Point[];
  readonly name: { readonly text: string; readonly at: Point; readonly anchor: 'start' | 'end' } | null;
}

const size = { width: 480, height: 320, left: 48, right: 454, top: 34, bottom: 266 };

/** Where everything of a chart stands. A line of one point is a dot, a chart without lines has its axes only. */
export function layOutLineChart({ across, up, lines, mark }: LineChart): LineLayout {
  const x = linearScale(across.start, across.most, size.left, size.right, 6);
  const y = linearScale(up.start, up.most, size.bottom, size.top, 5);
  const place = (point: Point): Point => ({ x: tenth(x.at(point.x)), y: tenth(y.at(point.y)) });
  return {
    ...size,
    across: { scale: x, label: across.label },
    up: { scale: y, label: up.label },
    lines: lines
      .filter(({ points }) => points.length > 0)
      .map(({ name, kind, points }) => {
        const placed = thinned(points.map(place), 1);
        return { kind, points: placed, name: name === null ? null : besideLine(name, kind, placed) };
      }),
    mark: mark === null ? null : { at: place(mark.at), name: mark.name },
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
