import { type ChartFrame, tenth } from './chart-parts.ts';
import { type MarkKind, markRadius } from './flight-marks.ts';
import { boxOf, meet, type PlacedName, widthOfName } from './placed-name.ts';
import { linearScale, type Scale } from './scale.ts';
import type { Point } from './thinned.ts';

/** Values on one line, above a band with a middle: what was reached beside what was to be expected. */
export interface StripChart {
  readonly label: string;
  readonly marks: readonly StripMark[];
  readonly band: { readonly low: number; readonly high: number; readonly name: string } | null;
  readonly middle: { readonly value: number; readonly name: string } | null;
}

export interface StripMark {
  readonly value: number;
  readonly u: number;
  readonly kind: MarkKind;
  readonly best: boolean;
}

export interface StripLayout extends ChartFrame {
  readonly scale: Scale;
  readonly label: string;
  readonly marks: readonly (Point & { readonly kind: MarkKind; readonly best: boolean })[];
  /** ± of the best mark, where it is more than the mark covers. */
  readonly bars: readonly { readonly y: number; readonly from: number; readonly to: number }[];
  readonly band: { readonly left: number; readonly right: number; readonly name: PlacedName } | null;
  readonly middle: { readonly x: number; readonly name: PlacedName | null } | null;
}

const across = { width: 480, left: 12, right: 468 };
/** From one mark to the next on top of it. */
const step = 2 * markRadius + 3;
/** Marks are stacked so high, and lie over one another beyond. */
const mostStacked = 6;
const nameHeight = 40;

/** Where everything stands; marks that would lie over one another are stacked. The axis begins at 0. */
export function layOutStrip({ label, marks, band, middle }: StripChart): StripLayout {
  const most = Math.max(0, ...marks.map(({ value, u }) => value + u), band?.high ?? 0, middle?.value ?? 0);
  const scale = linearScale(0, most, across.left, across.right, 5);
  const stacked = stack(marks.map(({ value }) => scale.at(value)));
  const height = Math.max(3, ...stacked.map((level) => level + 1));
  const top = nameHeight;
  const bottom = top + height * step + 10;
  const placed = marks.map(({ value, kind, best }, index) => ({
    x: tenth(scale.at(value)),
    y: tenth(bottom - 10 - stacked[index]! * step),
    kind,
    best,
  }));
  const bandName =
    band === null ? null : centred(band.name, (scale.at(band.low) + scale.at(band.high)) / 2, 14);
  return {
    ...across,
    top,
    bottom,
    height: bottom + 52,
    scale,
    label,
    marks: placed,
    bars: marks.flatMap(({ value, u, best }, index) => {
      const [from, to] = [scale.at(Math.max(0, value - u)), scale.at(value + u)];
      return best && to - from > 2 * markRadius
        ? [{ y: placed[index]!.y, from: tenth(from), to: tenth(to) }]
        : [];
    }),
    band:
      band === null || bandName === null
        ? null
        : { left: tenth(scale.at(Math.max(0, band.low))), right: tenth(scale.at(band.high)), name: bandName },
    middle: middle === null ? null : placeMiddle(scale.at(middle.value), middle.name, bandName),
  };
}

function placeMiddle(x: number, text: string, other: PlacedName | null): StripLayout['middle'] {
  const name = centred(text, x, nameHeight - 6);
  return { x: tenth(x), name: other !== null && meet(boxOf(name), boxOf(other)) ? null : name };
}

/** Words about a place, pushed in from the edges. */
function centred(text: string, x: number, y: number): PlacedName {
  const half = widthOfName(text) / 2;
  return {
    text,
    at: { x: tenth(Math.min(Math.max(x - half, 0), across.width - 2 * half)), y },
    anchor: 'start',
  };
}

/** The level of each mark: the lowest on which it lies clear of those before it, from left to right. */
function stack(places: readonly number[]): readonly number[] {
  const ends: number[] = [];
  const levels = new Array<number>(places.length).fill(0);
  const order = places.map((_, index) => index).sort((a, b) => places[a]! - places[b]!);
  for (const index of order) {
    const x = places[index]!;
    const free = ends.findIndex((end) => end <= x);
    const level = free !== -1 ? free : Math.min(ends.length, mostStacked - 1);
    levels[index] = level;
    ends[level] = x + step;
  }
  return levels;
}
