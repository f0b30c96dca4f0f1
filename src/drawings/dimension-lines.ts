import type { Annotation, Placing } from './annotation.ts';
import { boxAround } from './box.ts';
import type { Label, LabelPlace } from './label.ts';
import type { PlanShape } from './plan-shape.ts';
import type { Point } from './point.ts';
import type { Sheet } from './sheet.ts';
import { linePath, tenth } from './svg-text.ts';
import { quarterChord } from './wing-shape.ts';

/** A dimension shorter than this on paper would be all ticks. */
const shortest = 16;

/** From wing tip to wing tip: above the aircraft, or below it where the wing is nearer to that end. */
export function spanDimension({ wing }: PlanShape, sheet: Sheet, label: Label): Annotation {
  const tip = wing.sections.reduce((far, one) => (one.y >= far.y ? one : far));
  const [left, right] = [sheet.above({ x: 0, y: -tip.y }), sheet.above({ x: 0, y: tip.y })];
  const front = sheet.above({ x: tip.leading, y: 0 }).y;
  const rear = sheet.above({ x: tip.trailing, y: 0 }).y;
  const ahead = front - sheet.paper.top <= sheet.floor - rear;
  const y = ahead ? sheet.paper.top - 20 : sheet.floor + 22;
  const edge = ahead ? front - 4 : rear + 4;
  const over = ahead ? y - 5 : y + 5;
  const lines =
    dimension({ x: left.x, y }, { x: right.x, y }) +
    linePath({ x: left.x, y: edge }, { x: left.x, y: over }) +
    linePath({ x: right.x, y: edge }, { x: right.x, y: over });
  const place = { x: sheet.width / 2, y: y - 5, anchor: 'middle' } as const;
  return {
    label,
    placings: [
      {
        place,
        lines,
        room: boxAround(
          [
            { ...left, y },
            { ...right, y },
          ],
          0,
        ),
      },
    ],
  };
}

/** From quarter-chord to quarter-chord, beside the tail. */
export function armDimension(shape: PlanShape, sheet: Sheet, label: Label): Annotation {
  const { wing, tail } = shape;
  if (tail === null) return { label, placings: [] };
  const wingEnd = quarterChord(wing);
  const tailEnd = tail.leading + tail.chord / 4;
  const root = wing.sections[0];
  const edge = tailEnd > wingEnd ? (root?.trailing ?? wingEnd) : (root?.leading ?? wingEnd);
  return upDown(sheet, label, {
    from: wingEnd,
    to: tailEnd,
    offsets: [0, 1, 2, 3, 4, 5].map((step) => (tail.span / 2) * sheet.scale + 12 + 14 * step),
    words: (edge + tailEnd) / 2,
    reaching: [
      { x: wingEnd, from: null },
      { x: tailEnd, from: tail.span / 2 },
    ],
  });
}

/** From the leading edge at the centre line to the trailing edge, on the wing itself. */
export function rootChordDimension(shape: PlanShape, sheet: Sheet, label: Label): Annotation {
  const [root] = shape.wing.sections;
  if (root === undefined) return { label, placings: [] };
  return upDown(sheet, label, {
    from: root.leading,
    to: root.trailing,
    offsets: [16, 26],
    words: (root.leading + root.trailing) / 2,
    reaching: [],
  });
}

/** From the leading edge at the centre line to the place of nose ballast. */
export function noseDimension(shape: PlanShape, sheet: Sheet, label: Label): Annotation {
  const front = shape.stick?.front ?? 0;
  return upDown(sheet, label, {
    from: front,
    to: 0,
    offsets: [14, 24],
    words: front / 2,
    reaching: [{ x: front, from: 0 }],
  });
}

interface UpDown {
  /** Both ends, metres behind the leading edge. */
  readonly from: number;
  readonly to: number;
  /** Distances from the centre line at which it may stand, units of the paper, the best first. */
  readonly offsets: readonly number[];
  /** Where the words stand along it, metres. */
  readonly words: number;
  /** Ends with a line that leads to them from so far out, metres; from null, a short one beside the dimension. */
  readonly reaching: readonly { readonly x: number; readonly from: number | null }[];
}

/** A dimension along the aircraft, right or left of the centre line, its words level beside it, else upright. */
function upDown(sheet: Sheet, label: Label, { from, to, offsets, words, reaching }: UpDown): Annotation {
  const high = sheet.above({ x: Math.min(from, to), y: 0 }).y;
  const low = sheet.above({ x: Math.max(from, to), y: 0 }).y;
  if (!(low - high >= shortest)) return { label, placings: [] };
  const middle = sheet.above({ x: words, y: 0 }).y;
  const centre = sheet.width / 2;
  const placings = [false, true].flatMap((upright) =>
    offsets.flatMap((offset) =>
      ([1, -1] as const).map((side): Placing => {
        const x = centre + side * offset;
        const lead = reaching.map(({ x: end, from: out }) => {
          const y = sheet.above({ x: end, y: 0 }).y;
          const start = out === null ? x - side * 6 : centre + side * (out * sheet.scale + 4);
          return linePath({ x: start, y }, { x: x + side * 5, y });
        });
        return {
          place: upright ? uprightPlace(x, middle, side) : levelPlace(x, middle, side),
          lines: dimension({ x, y: high }, { x, y: low }) + lead.join(''),
          room: boxAround(
            [
              { x, y: high + 2 },
              { x, y: low - 2 },
            ],
            2,
          ),
        };
      }),
    ),
  );
  return { label, placings };
}

function levelPlace(x: number, middle: number, side: 1 | -1): LabelPlace {
  return { x: x + side * 6, y: middle + 4, anchor: side === 1 ? 'start' : 'end' };
}

function uprightPlace(x: number, middle: number, side: 1 | -1): LabelPlace {
  return { x: side === 1 ? x + 14 : x - 6, y: middle, anchor: 'middle', upright: true };
}

/** The line with a slanting tick at both ends. */
function dimension(from: Point, to: Point): string {
  return linePath(from, to) + tick(from) + tick(to);
}

function tick({ x, y }: Point): string {
  return `M${tenth(x - 3.5)} ${tenth(y + 3.5)}l7 -7`;
}
