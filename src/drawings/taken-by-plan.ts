import type { Taken } from './annotation.ts';
import { type Box, boxAround, boxesAlong } from './box.ts';
import type { PlanShape } from './plan-shape.ts';
import type { Point } from './point.ts';
import type { Sheet } from './sheet.ts';
import { tailOutline } from './tail-shape.ts';
import { wingFromBehind } from './view-from-behind.ts';
import { wingOutline } from './wing-shape.ts';

/** The room that the aircraft takes on the paper, in both views. */
export function takenByPlan(shape: PlanShape, sheet: Sheet): Taken {
  const { wing, tail, fins, stick, motors, balance, neutralPoint } = shape;
  const { above, behind, scale } = sheet;
  const closed = (points: readonly Point[]) => [...points, ...points.slice(0, 1)].map(above);
  const solids: Box[] = [
    ...(stick === null
      ? []
      : [boxAround([above({ x: stick.front, y: 0 }), above({ x: stick.rear, y: 0 })], 4)]),
    ...fins.map(({ y, leading, chord }) =>
      boxAround([above({ x: leading, y }), above({ x: leading + chord, y })], 3),
    ),
    ...(balance === null ? [] : [boxAround([above({ x: balance, y: 0 })], 8)]),
    ...(neutralPoint === null ? [] : [pointer(above({ x: neutralPoint, y: 0 }))]),
    ...motors.flatMap(({ y, propeller, hook, radius }) => {
      const hub = above({ x: propeller, y });
      const across = (radius ?? 0) * scale;
      const disc = boxAround(
        [
          { ...hub, x: hub.x - across },
          { ...hub, x: hub.x + across },
        ],
        4,
      );
      return hook === null ? [disc] : [disc, boxAround([hub, above({ x: hook, y })], 3)];
    }),
  ];
  const outlines = [
    ...boxesAlong(closed(wingOutline(wing)), 1.5),
    ...(tail === null ? [] : boxesAlong(closed(tailOutline(tail)), 1.5)),
    ...boxesAlong(wingFromBehind(shape, sheet), 2),
    ...(behind === null
      ? []
      : motors.flatMap(({ y, z, radius }) => [boxAround([behind(y, z)], (radius ?? 0) * scale + 4)])),
  ];
  return { solids, outlines };
}

function pointer({ x, y }: Point): Box {
  return boxAround(
    [
      { x, y },
      { x: x - 15, y },
    ],
    5,
  );
}
