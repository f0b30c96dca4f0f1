import type { Paper } from './paper.ts';
import type { PlanShape } from './plan-shape.ts';
import type { Point } from './point.ts';
import { tailOutline } from './tail-shape.ts';
import { wingOutline } from './wing-shape.ts';

/** Where metres lie on paper: one scale, in both directions and in both views. */
export interface Sheet {
  readonly paper: Paper;
  readonly width: number;
  readonly height: number;
  /** Units of the paper for each metre. */
  readonly scale: number;
  /** Nose up. */
  above(point: Point): Point;
  /** Below it, left and right as above; null where there is no such view. */
  readonly behind: ((across: number, height: number) => Point) | null;
  /** The lowest line of the view from above. */
  readonly floor: number;
}

/** How far the aircraft reach: to either side, forwards and backwards, and up and down seen from behind; metres. */
interface Reach {
  readonly half: number;
  readonly front: number;
  readonly rear: number;
  readonly high: number;
  readonly low: number;
}

/** The sheet for one aircraft, or for several laid over each other, each moved by so many metres forwards. */
export function layOutSheet(
  shapes: readonly { readonly shape: PlanShape; readonly forwards: number }[],
  paper: Paper,
  fromBehind: boolean,
): Sheet {
  const reach = reachOf(shapes);
  const deep = reach.rear - reach.front;
  const tall = fromBehind ? reach.high - reach.low : 0;
  const gap = fromBehind ? paper.gap : 0;
  const free = paper.tallest - paper.top - paper.bottom - gap;
  const scale = Math.min((paper.width - 2 * paper.sides) / (2 * reach.half), free / (deep + tall));
  const floor = paper.top + deep * scale;
  const lowest = floor + gap + tall * scale;
  const centre = paper.width / 2;
  return {
    paper,
    width: paper.width,
    height: Math.ceil(lowest + paper.bottom),
    scale,
    floor,
    above: ({ x, y }) => ({ x: centre + y * scale, y: paper.top + (x - reach.front) * scale }),
    behind: fromBehind
      ? (across, height) => ({ x: centre + across * scale, y: lowest - (height - reach.low) * scale })
      : null,
  };
}

function reachOf(shapes: readonly { readonly shape: PlanShape; readonly forwards: number }[]): Reach {
  const along = shapes.flatMap(({ shape, forwards }) => lengthsOf(shape).map((x) => x - forwards));
  const across = shapes.flatMap(({ shape }) => widthsOf(shape));
  const heights = shapes.flatMap(({ shape }) => heightsOf(shape));
  return {
    half: Math.max(...across.map(Math.abs)),
    front: Math.min(...along),
    rear: Math.max(...along),
    high: Math.max(...heights),
    low: Math.min(...heights),
  };
}

function lengthsOf({ wing, tail, fins, stick, motors, balance, neutralPoint }: PlanShape): number[] {
  return [
    ...wingOutline(wing).map(({ x }) => x),
    ...(tail === null ? [] : tailOutline(tail).map(({ x }) => x)),
    ...fins.flatMap(({ leading, chord }) => [leading, leading + chord]),
    ...(stick === null ? [] : [stick.front, stick.rear]),
    ...motors.flatMap(({ propeller, hook }) => [propeller, hook ?? propeller]),
    ...[balance, neutralPoint].filter((x) => x !== null),
  ];
}

function widthsOf({ wing, tail, fins, motors }: PlanShape): number[] {
  return [
    ...wing.sections.map(({ y }) => y),
    (tail?.span ?? 0) / 2,
    ...fins.map(({ y }) => y),
    ...motors.flatMap(({ y, radius }) => [y - (radius ?? 0), y + (radius ?? 0)]),
  ];
}

function heightsOf({ wing, motors }: PlanShape): number[] {
  return [
    ...wing.sections.map(({ z }) => z),
    ...motors.flatMap(({ z, radius }) => [z - (radius ?? 0), z + (radius ?? 0)]),
  ];
}
