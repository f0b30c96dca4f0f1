import type { MotorShape } from './motor-shapes.ts';
import type { PlanShape } from './plan-shape.ts';
import type { Point } from './point.ts';
import type { Sheet } from './sheet.ts';
import { closedPath, linePath, path, tenth } from './svg-text.ts';
import { tailOutline } from './tail-shape.ts';
import { wingJoints, wingOutline } from './wing-shape.ts';

/** Half the thickness of a propeller's disc on edge, and of a fin; units of the paper. */
const thin = 2.2;

/** Half the width of the body, which nobody measures; units of the paper. */
const stickHalf = 2.4;

/** An aircraft from above: what lies lower is drawn first. Classes: `drawn-…`; what is a guess has `assumed`, too. */
export function viewFromAbove(shape: PlanShape, sheet: Sheet): string {
  const { wing, tail, fins, stick, motors, balance, neutralPoint } = shape;
  const at = sheet.above;
  const parts: string[] = [];
  if (stick !== null) {
    const [front, rear] = [at({ x: stick.front, y: 0 }), at({ x: stick.rear, y: 0 })];
    const sides = [
      { x: front.x + stickHalf, y: front.y },
      { x: rear.x + stickHalf, y: rear.y },
      { x: rear.x - stickHalf, y: rear.y },
      { x: front.x - stickHalf, y: front.y },
    ];
    parts.push(path(named('drawn-stick', stick.assumed), closedPath(sides)));
  }
  if (tail !== null)
    parts.push(path(named('drawn-outline', tail.assumed), closedPath(tailOutline(tail).map(at))));
  parts.push(path(named('drawn-outline', wing.assumed), closedPath(wingOutline(wing).map(at))));
  const joints = wingJoints(wing).flatMap(([from, to]) => [
    linePath(at(from), at(to)),
    linePath(at({ x: from.x, y: -from.y }), at({ x: to.x, y: -to.y })),
  ]);
  if (joints.length > 0) parts.push(path('drawn-joint', joints.join('')));
  parts.push(
    ...fins.map(({ y, leading, chord }) =>
      path('drawn-fin', upright(at({ x: leading, y }), chord * sheet.scale)),
    ),
  );
  parts.push(...motors.map((motor) => motorFromAbove(motor, sheet)));
  parts.push(centreLine(shape, sheet));
  if (neutralPoint !== null) parts.push(neutralMark(at({ x: neutralPoint, y: 0 })));
  if (balance !== null) parts.push(balanceMark(at({ x: balance, y: 0 })));
  return parts.join('');
}

/** The skein's run and the disc on edge, with the way its near blade goes. */
function motorFromAbove(
  { y, propeller, hook, radius, rotation, faces, assumed }: MotorShape,
  sheet: Sheet,
): string {
  const hub = sheet.above({ x: propeller, y });
  const parts: string[] = [];
  if (hook !== null) {
    const end = sheet.above({ x: hook, y });
    parts.push(path(named('drawn-skein', assumed), linePath(hub, end)));
    parts.push(`<circle class="drawn-peg" cx="${tenth(end.x)}" cy="${tenth(end.y)}" r="1.8"/>`);
  }
  if (radius === null)
    parts.push(`<circle class="drawn-peg" cx="${tenth(hub.x)}" cy="${tenth(hub.y)}" r="2.6"/>`);
  else {
    const reach = radius * sheet.scale;
    parts.push(path(named('drawn-disc', assumed), lens(hub, reach)));
    if (rotation !== null && reach > 9)
      parts.push(turnMark(hub, faces === 'tractor' ? -6.5 : 6.5, reach, rotation === 'clockwise' ? 1 : -1));
  }
  return parts.join('');
}

function lens({ x, y }: Point, reach: number): string {
  return `M${tenth(x - reach)} ${tenth(y)}q${tenth(reach)} ${-2 * thin} ${tenth(2 * reach)} 0q${tenth(-reach)} ${2 * thin} ${tenth(-2 * reach)} 0Z`;
}

function upright({ x, y }: Point, length: number): string {
  return `M${tenth(x)} ${tenth(y)}q${2 * thin} ${tenth(length / 3)} 0 ${tenth(length)}q${-2 * thin} ${tenth(-length / 1.5)} 0 ${tenth(-length)}Z`;
}

/** Clockwise from behind, the upper blade goes to the right. */
function turnMark({ x, y }: Point, off: number, reach: number, way: 1 | -1): string {
  const length = Math.min(16, reach);
  const tip = { x: x + (way * length) / 2, y: y + off };
  const shaft = `M${tenth(tip.x - way * length)} ${tenth(tip.y)}h${tenth(way * length)}`;
  return path('drawn-turn', `${shaft}m${-3 * way} -2.5l${3 * way} 2.5l${-3 * way} 2.5`);
}

/** Dash and dot, a little beyond both ends. */
function centreLine({ stick, wing, tail, motors }: PlanShape, sheet: Sheet): string {
  const ends = [
    ...wing.sections.slice(0, 1).flatMap(({ leading, trailing }) => [leading, trailing]),
    ...(stick === null ? [] : [stick.front, stick.rear]),
    ...(tail === null ? [] : [tail.leading, tail.leading + tail.chord]),
    ...motors.filter(({ y }) => y === 0).map(({ propeller }) => propeller),
  ];
  const from = sheet.above({ x: Math.min(...ends), y: 0 });
  const to = sheet.above({ x: Math.max(...ends), y: 0 });
  return path('drawn-axis', linePath({ ...from, y: from.y - 10 }, { ...to, y: to.y + 8 }));
}

/** The circle in quarters of engineering drawings. */
export function balanceMark({ x, y }: Point): string {
  const place = `${tenth(x)} ${tenth(y)}`;
  return `<circle class="drawn-mark" cx="${tenth(x)}" cy="${tenth(y)}" r="6"/>${path('drawn-mark-filled', `M${place}v-6a6 6 0 0 1 6 6zM${place}v6a6 6 0 0 1 -6 -6z`)}`;
}

/** A pointer from the left, clear of the balance, however near that is. */
export function neutralMark({ x, y }: Point): string {
  return path('drawn-mark', `M${tenth(x)} ${tenth(y)}h-7l-8 -4.5v9l8 -4.5`);
}

function named(name: string, assumed: boolean): string {
  return assumed ? `${name} assumed` : name;
}
