import type { FigureSet } from '../figures/figure.ts';
import type { Design } from '../model/design.ts';
import { planShape } from './plan-shape.ts';
import type { Point } from './point.ts';
import { tailOutline } from './tail-shape.ts';
import { wingOutline } from './wing-shape.ts';

const width = 120;
const height = 60;
const margin = 3;

/** No thumbnail is longer, so that a board of a hundred rows stays light. */
const mostBytes = 600;

/**
 * A design as a small SVG of one path without words, for a row of a board: wing, tail, stick and propellers from above,
 * in a box of 120 × 60, at most 600 bytes. Decorative: it is hidden from screen readers. The class is `thumbnail`,
 * see styles/board.css. Empty text where nothing gives the wing a depth.
 */
export function drawThumbnail(design: Design, figures: FigureSet): string {
  const shape = planShape(design, figures);
  if (shape === null) return '';
  const wing = wingOutline(shape.wing);
  const tail = shape.tail === null ? [] : tailOutline(shape.tail);
  const stick = shape.stick === null ? [] : [at(shape.stick.front, 0), at(shape.stick.rear, 0)];
  const discs = shape.motors.flatMap(({ propeller, y, radius }) =>
    radius === null ? [] : [[at(propeller, y - radius), at(propeller, y + radius)]],
  );
  const place = fitted([...wing, ...tail, ...stick, ...discs.flat()]);
  const airframe = [
    closed(wing.map(place)),
    ...(tail.length > 0 ? [closed(tail.map(place))] : []),
    ...lines([stick], place),
  ];
  const whole = svg([...airframe, ...lines(discs, place)]);
  if (whole.length <= mostBytes) return whole;
  const bare = svg(airframe);
  return bare.length <= mostBytes ? bare : svg([closed(corners(wing).map(place))]);
}

function at(x: number, y: number): Point {
  return { x, y };
}

function fitted(points: readonly Point[]): (point: Point) => Point {
  const front = Math.min(...points.map(({ x }) => x));
  const deep = Math.max(...points.map(({ x }) => x)) - front;
  const half = Math.max(...points.map(({ y }) => Math.abs(y)));
  const scale = Math.min((width - 2 * margin) / (2 * half), (height - 2 * margin) / deep);
  const top = (height - deep * scale) / 2;
  return ({ x, y }) => ({ x: Math.round(width / 2 + y * scale), y: Math.round(top + (x - front) * scale) });
}

/** The outline without what lies between its ends. */
function corners(outline: readonly Point[]): Point[] {
  const tip = Math.max(...outline.map(({ y }) => y));
  const [root, last] = [outline[0], outline[Math.ceil(outline.length / 2) - 1]];
  const ends = outline.filter(({ y }) => Math.abs(y) === tip);
  return [root, ...ends, last].filter((point) => point !== undefined);
}

function closed(points: readonly Point[]): string {
  return `M${points.map(({ x, y }) => `${x} ${y}`).join(' ')}z`;
}

function lines(pairs: readonly (readonly Point[])[], place: (point: Point) => Point): string[] {
  return pairs
    .filter((pair) => pair.length > 1)
    .map(
      (pair) =>
        `M${pair
          .map(place)
          .map(({ x, y }) => `${x} ${y}`)
          .join(' ')}`,
    );
}

function svg(parts: readonly string[]): string {
  return `<svg class="thumbnail" viewBox="0 0 ${width} ${height}" aria-hidden="true"><path d="${parts.join('')}"/></svg>`;
}
