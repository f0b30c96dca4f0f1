import type { PlanShape, Point } from './plan-shape.ts';

/** Where the metres of a plan lie on paper: one scale in both directions. */
export interface PlanSheet {
  readonly width: number;
  readonly height: number;
  /** Sheet units for each metre. */
  readonly scale: number;
  place(point: Point): Point;
}

/** The sheet that holds every part of the shape with the margin around it. */
export function planSheet(shape: PlanShape, width: number, tallest: number, margin: number): PlanSheet {
  const points = allPoints(shape);
  const xs = points.map((point) => point.x);
  const front = Math.min(...xs);
  const deep = Math.max(...xs) - front;
  const half = Math.max(...points.map((point) => Math.abs(point.y)));
  const scale = Math.min(
    (width - 2 * margin) / (2 * half),
    deep > 0 ? (tallest - 2 * margin) / deep : Infinity,
  );
  return {
    width,
    height: rounded(deep * scale + 2 * margin),
    scale,
    place: ({ x, y }) => ({ x: rounded(width / 2 + y * scale), y: rounded(margin + (x - front) * scale) }),
  };
}

/** Everything that takes room on the sheet, in metres. */
function allPoints({ wing, tail, motors, balance }: PlanShape): Point[] {
  return [
    ...wing,
    ...(tail?.outline ?? []),
    ...motors.flatMap(({ y, propellerX, hookX, radius }) => [
      { x: propellerX, y: y - (radius ?? 0) },
      { x: propellerX, y: y + (radius ?? 0) },
      { x: hookX ?? propellerX, y },
    ]),
    ...(balance === null ? [] : [{ x: balance, y: 0 }]),
  ];
}

function rounded(length: number): number {
  return Math.round(length * 100) / 100;
}
