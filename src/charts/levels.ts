import { type ChartFrame, tenth } from './chart-parts.ts';
import { freeSeat } from './free-seat.ts';
import { type Box, boxOf, clippedName, type PlacedName } from './placed-name.ts';
import type { Scale } from './scale.ts';

/** A time with a name, drawn across a chart. */
export interface Level {
  readonly kind: 'target' | 'milestone';
  readonly seconds: number;
  readonly text: string;
}

export interface PlacedLevel {
  readonly kind: Level['kind'];
  readonly y: number;
  /** Null where another line is too close for words. */
  readonly name: PlacedName | null;
}

/** In letters. */
const longestName = 30;

/**
 * The target, and of the milestones those passed and the next one, so that a far one does not press a chart flat.
 *
 * @param say a time with a name as it stands on its line
 */
export function levelsUpTo(
  best: number,
  target: { readonly time: number; readonly label: string | null } | null,
  milestones: readonly { readonly time: number; readonly label: string }[],
  say: (seconds: number, label: string | null) => string,
): readonly Level[] {
  const next = milestones.find(({ time }) => time > best);
  return [
    ...(target === null
      ? []
      : [{ kind: 'target' as const, seconds: target.time, text: say(target.time, target.label) }]),
    ...milestones
      .filter((milestone) => milestone.time <= best || milestone === next)
      .map(({ time, label }) => ({ kind: 'milestone' as const, seconds: time, text: say(time, label) })),
  ];
}

/**
 * Names stand on their lines: where what is drawn leaves room, at the left or the right, above or below. Where there is
 * room for no more words, a later name is left to the list beside the chart; the target's comes first.
 *
 * @param words the room that other words take up
 * @param drawn the room of what names should rather not lie over
 */
export function placeLevels(
  levels: readonly Level[],
  scale: Scale,
  frame: ChartFrame,
  words: readonly Box[],
  drawn: readonly Box[],
): readonly PlacedLevel[] {
  const taken = [...words];
  return levels.map(({ kind, seconds, text }) => {
    const y = tenth(scale.at(seconds));
    const name = freeSeat(seatsOnLine(clippedName(text, longestName), y, frame), taken, drawn);
    if (name !== null) taken.push(boxOf(name));
    return { kind, y, name };
  });
}

/** Where the name of a line may stand, the best place first. */
function seatsOnLine(text: string, y: number, frame: ChartFrame): readonly PlacedName[] {
  const left = { text, anchor: 'start' } as const;
  const right = { text, anchor: 'end' } as const;
  const above = tenth(y - 5);
  const below = tenth(y + 16);
  return [
    { ...left, at: { x: frame.left + 6, y: above } },
    { ...right, at: { x: frame.right, y: above } },
    { ...right, at: { x: frame.right, y: below } },
    { ...left, at: { x: frame.left + 6, y: below } },
  ].filter(({ at }) => at.y < frame.bottom);
}
