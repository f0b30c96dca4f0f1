import { tenth } from '../chart-parts.ts';
import { type Box, boxOf, clippedName, meet, type PlacedName, widthOfName } from '../placed-name.ts';
import type { Point } from '../thinned.ts';

/** In letters; where a name finds no seat, it is tried again as the shorter one. */
const longestName = 24;
const shortName = 12;
/** More names than this make a wood without trees. */
const mostNames = 60;
/** Half the room that a mark takes up, and its distance from its name. */
const mark = 5;

/** A mark that wants a name. */
export interface Named extends Point {
  readonly id: string;
  readonly name: string;
}

/**
 * Names beside their marks, the first to come served first: none runs into another, over a mark or out of the frame. One
 * that finds no seat is left out; whoever points at its mark reads it.
 */
export function placeLabels(
  wanted: readonly Named[],
  marks: readonly Point[],
  inside: Box,
): ReadonlyMap<string, PlacedName> {
  const taken: Box[] = marks.map(roomOf);
  const placed = new Map<string, PlacedName>();
  for (const one of wanted) {
    if (placed.size === mostNames) break;
    const seats = [longestName, shortName].flatMap((letters) => seatsBeside(one, letters));
    const seat = seats.find((name) => {
      const box = boxOf(name);
      return isInside(box, inside) && taken.every((other) => !meet(box, other));
    });
    if (seat === undefined) continue;
    placed.set(one.id, seat);
    taken.push(boxOf(seat));
  }
  return placed;
}

/** The best seat for the one name that is pointed at: inside the frame where it can be, over whatever lies there. */
export function seatInFront(one: Named, inside: Box): PlacedName {
  const seats = seatsBeside(one, longestName);
  return seats.find((name) => isInside(boxOf(name), inside)) ?? seats[0]!;
}

/** Right, left, then above and below, a little to each side. */
function seatsBeside({ name, x, y }: Named, letters: number): [PlacedName, ...PlacedName[]] {
  const text = clippedName(name, letters);
  const half = widthOfName(text) / 2;
  const seat = (anchor: 'start' | 'end', dx: number, dy: number): PlacedName => ({
    text,
    anchor,
    at: { x: tenth(x + dx), y: tenth(y + dy) },
  });
  return [
    seat('start', mark + 4, 5),
    seat('end', -mark - 4, 5),
    seat('start', -half, -mark - 5),
    seat('start', -half, mark + 17),
    seat('start', 2, -mark - 5),
    seat('end', -2, -mark - 5),
    seat('start', 2, mark + 17),
    seat('end', -2, mark + 17),
  ];
}

function roomOf({ x, y }: Point): Box {
  return { left: x - mark, right: x + mark, top: y - mark, bottom: y + mark };
}

function isInside(box: Box, frame: Box): boolean {
  return (
    box.left >= frame.left && box.right <= frame.right && box.top >= frame.top && box.bottom <= frame.bottom
  );
}
