import { type Box, boxOf, meet, type PlacedName } from './placed-name.ts';

/**
 * The first seat where words meet no other words and lie over nothing drawn; else the first where they meet no other words,
 * for words over a line can still be read; null where there is no room for more words.
 *
 * @param seats where the words may stand, the best place first
 * @param words the room that other words take up
 * @param drawn the room of what words should rather not lie over
 */
export function freeSeat(
  seats: readonly PlacedName[],
  words: readonly Box[],
  drawn: readonly Box[],
): PlacedName | null {
  const free = seats.filter((seat) => !meetsAny(seat, words));
  return free.find((seat) => !meetsAny(seat, drawn)) ?? free[0] ?? null;
}

function meetsAny(seat: PlacedName, boxes: readonly Box[]): boolean {
  const box = boxOf(seat);
  return boxes.some((other) => meet(box, other));
}
